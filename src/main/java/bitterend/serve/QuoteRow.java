package bitterend.serve;

/**
 * A kept quote as its row shows it.
 *
 * @param number its number
 * @param name number and revision, as printed
 * @param customer who asked
 * @param total its price before tax
 * @param validUntil the last day it holds
 * @param state how far it has come, in words
 * @param open whether it may still be sent and answered
 * @param sendable whether it is not sent yet
 * @param undoable whether something happened to it that can be taken back
 */
public record QuoteRow(
        String number,
        String name,
        String customer,
        String total,
        String validUntil,
        String state,
        boolean open,
        boolean sendable,
        boolean undoable) {}
