package org.stillrail.web;

/**
 * A path that takes a larger file than others do, up to {@code spring.servlet.multipart.max-file-size}. A room declares it as a bean.
 *
 * @param what the file is called in a refusal
 */
public record LargeUpload(String path, String what) {
}
