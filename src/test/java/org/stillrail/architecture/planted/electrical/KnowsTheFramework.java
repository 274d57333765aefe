package org.stillrail.architecture.planted.electrical;

import org.springframework.util.StringUtils;

/** Physics that leans on Spring. */
class KnowsTheFramework {

    boolean offends(String text) {
        return StringUtils.hasText(text);
    }
}
