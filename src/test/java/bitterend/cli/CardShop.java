package bitterend.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A shop that makes one of each kind of end. All numbers are invented. */
final class CardShop {
    private CardShop() {}

    static Path in(Path folder) throws IOException {
        Path shop = Files.createDirectory(folder.resolve("cards"));
        Files.writeString(
                shop.resolve("shop.json"),
                """
                {"format": "bitterend/shop/1", "name": "Northgate Loft", "units": "metric", "currency": "EUR",
                 "day": "2026-03-02", "labour": "48 EUR/h"}
                """);
        Files.writeString(
                shop.resolve("ropes.json"),
                """
                {"format": "bitterend/ropes/1", "ropes": [
                """
                        + String.join(
                                ",\n",
                                rope("DB12", "double braid", "polyester", "12 mm", ""),
                                rope("HM8", "12-strand", "HMPE", "8 mm", ""),
                                rope("TS16", "3-strand", "polyester", "16 mm", ", \"lay\": \"right ordinary\""),
                                rope("ES24", "8-strand", "polyester", "24 mm", ""),
                                rope("CD10", "core-dependent double braid", "HMPE", "10 mm", ", \"core\": \"HMPE\""),
                                rope("KM11", "kernmantle", "nylon", "11 mm", ""),
                                rope(
                                        "W12",
                                        "wire",
                                        "steel",
                                        "12 mm",
                                        ", \"lay\": \"right ordinary\", \"core\": \"IWRC\""))
                        + "]}\n");
        Files.writeString(
                shop.resolve("thimbles.json"),
                """
                {"format": "bitterend/thimbles/1",
                 "fittings": [{"id": "fork-12", "name": "fork for 12 mm", "ropeFrom": "12 mm", "ropeTo": "12 mm", "pinToBore": "45 mm"}]}
                """);
        Files.writeString(
                shop.resolve("orders.csv"),
                """
                order,line,customer,rope,length,measured,extension,shrinkage,end a,end b,quantity,legs,due,spare,sample,tolerance,note
                1,1,Harbour Board,DB12,8 m,,,,double-braid-eye length 300 mm pin 90 mm,double-braid-eye length 150 mm,2,,2026-03-05,,,25 mm,springs
                1,2,Harbour Board,HM8,3.4 m,,,,bury-eye-hmpe length 120 mm,bury-eye-hmpe length 120 mm,1,2,2026-03-05,150 mm,1 m,,
                1,3,Harbour Board,TS16,11 m,flat,2 %,,three-strand-eye length 250 mm tucks 5,whipped,1,,,,,1 %,
                1,4,Harbour Board,ES24,15 m,on pin 300 mm,,5 %,eight-strand-eye length 900 mm pin 300 mm,eight-strand-eye length 900 mm pin 300 mm,1,,,,,,
                1,5,Harbour Board,CD10,12 m,,,,core-dependent-eye length 100 mm,sealed,1,,,,,,
                1,6,Harbour Board,KM11,20 m,,,,figure-eight-loop length 120 mm,plain,1,,,,,,
                1,7,Harbour Board,W12,6 m,,,,clip-eye length 400 mm,wire-tucked-eye length 300 mm,1,,,,,,
                1,8,Harbour Board,W12,9.91 m,,,,swaged fork-12,swaged bore 45 mm,1,,,,,,
                1,9,Harbour Board,TS16,5 m,,,,short-splice,three-strand-eye length 250 mm tucks 5,1,,,,,,
                1,10,Harbour Board,TS16,1.2 m,circumference,,,fibre-grommet,plain,1,,,,,,
                """);
        Files.writeString(
                shop.resolve("reels.csv"),
                """
                reel,rope,lot,length,full
                R1,DB12,P1,100 m,no
                R2,HM8,P2,100 m,no
                R3,TS16,P3,200 m,no
                R4,ES24,P4,100 m,no
                R5,CD10,P5,100 m,no
                R6,KM11,P6,100 m,no
                R7,W12,P7,100 m,no
                """);
        return shop;
    }

    private static String rope(String id, String construction, String fibre, String diameter, String more) {
        return """
                  {"id": "%s", "name": "%s %s %s", "construction": "%s", "fibre": "%s", "diameter": "%s"%s,
                   "colour": "white", "price": "2 EUR/m", "usualReel": "220 m"}"""
                .formatted(id, construction, fibre, diameter, construction, fibre, diameter, more);
    }
}
