// How long texts may be: one set of limits for fields, family files and what is saved on the device.

/**
 * In characters, as many as a text of a list may have (longest_text in core/lists/catalogue), for a list's ids, colours and
 * names come into what a family keeps.
 */
export const longestText = 2000;

/** What a field takes, where it is no entry of a list. */
export const longestTyped = 200;

export const longestName = 40;
