/**
 * A content-addressed store: what took long to compute, kept in a folder under a key made from all
 * that went into it.
 *
 * <p>Nothing here is the shop's data: a folder may be emptied at any time, and what is missing is
 * computed again. Values come back bit for bit. The format of an entry stands in {@link
 * trimwright.cache.EntryFile}, that of a payload of arrays in {@link trimwright.cache.NamedArrays};
 * both are this project's own. Checksums are CRC-32C (Castagnoli, IEEE Transactions on
 * Communications 41, 1993; RFC 3720), keys SHA-256 (FIPS 180-4).
 */
package trimwright.cache;
