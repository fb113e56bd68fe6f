/** Limits of the platform, from its developer documentation as of 2026-08-06 (page names in brackets). */

/** Characters over all texts of one message (components/reference and the platform's published schema). */
export const MESSAGE_TEXT = 4000;
/** Components of one message, nested ones counted (components/reference). */
export const MESSAGE_COMPONENTS = 40;
export const BUTTONS_IN_ROW = 5;
export const BUTTON_LABEL = 80;
export const CUSTOM_ID = 100;
export const SELECT_OPTIONS = 25;
/** Label, value and description of an option, and of a choice of a command. */
export const OPTION_TEXT = 100;
export const FORM_TITLE = 45;
export const FORM_LABEL = 45;
export const FORM_HINT = 100;
/** Text alternative of a file or picture (resources/message). */
export const ALTERNATIVE = 1024;
/** Attachments of one message (the platform's published schema); a gallery shows as many pictures. */
export const FILES = 10;
/** Bytes of one file, where neither person nor server pays for more (reference). */
export const FILE_BYTES = 10 * 1024 * 1024;
/** Follow-ups of one interaction where the app belongs to the person alone (interactions/receiving-and-responding). */
export const FOLLOW_UPS = 5;
/** Names, descriptions and values of one command together (interactions/application-commands). */
export const COMMAND_TEXT = 8000;
export const COMMAND_NAME = 32;
/** Between two identifies of the same bucket: five seconds (events/gateway), and half a one for what delays them. */
export const IDENTIFY_APART = 5500;
