package bitterend.work;

import bitterend.exchange.SettingsText;
import java.util.List;

/** Asks what the settings of a shop are: a question that writes nothing. */
public final class AskSettings {
    private final ShopNow now;

    public AskSettings(ShopNow shop) {
        now = shop;
    }

    /** All there are, as they are written, with what holds where nothing is. */
    public List<SettingsText.Setting> settings() {
        return SettingsText.of(now.at().folder(), now.shop().settings());
    }
}
