/* global mergeInto, LibraryManager */
// Names for the linker what the engine's host has to bring along (see engine-client.js). No part of what is shipped.
mergeInto(LibraryManager.library, { saddlerule_progress() {}, saddlerule_may_go_on() {} });
