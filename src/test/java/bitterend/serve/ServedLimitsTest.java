package bitterend.serve;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bitterend.LimitsPage;
import org.junit.jupiter.api.Test;

/** What docs/limits.md says of the page in the browser is what is enforced; GuardTest and others try it. */
final class ServedLimitsTest {
    @Test
    void limitsOfThePage_areThoseOfTheServer() {
        assertEquals(LimitsPage.most("bytes of a form sent by a browser"), ShopServer.LARGEST_REQUEST);
        assertEquals(LimitsPage.most("fields of a form"), Guard.MOST_FIELDS);
        assertEquals(LimitsPage.most("browsers that hear of news at once"), News.MOST_LISTENERS);
    }
}
