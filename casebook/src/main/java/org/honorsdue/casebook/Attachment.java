package org.honorsdue.casebook;

import java.time.Instant;

/**
 * A picture or document kept with a case; its bytes are fetched apart.
 *
 * @param sha256 of the content, in hexadecimal
 */
public record Attachment(String id, String name, String mediaType, String sha256, int bytes, Instant attachedAt) {}
