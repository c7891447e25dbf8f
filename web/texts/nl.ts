// Every word of the page, in Dutch.
import type { Translation } from "./packed-texts";

export const dutch = {} as unknown as Translation;
