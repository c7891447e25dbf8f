// What the page file says where it cannot even unpack its own words.
import type { Language } from "./languages";

/** Without WebAssembly, which some browsers turn off when asked to be as safe as can be. */
export const cannotRun: Record<Language, string> = {
  en: "This browser cannot run Saddlerule: it is too old, or WebAssembly is turned off.",
  de: "Saddlerule läuft in diesem Browser nicht: Er ist zu alt, oder WebAssembly ist ausgeschaltet.",
  fr: "Saddlerule ne peut pas fonctionner dans ce navigateur : il est trop ancien, ou WebAssembly est désactivé.",
  es: "Saddlerule no funciona en este navegador: es demasiado antiguo o WebAssembly está desactivado.",
  nl: "Saddlerule werkt niet in deze browser: hij is te oud, of WebAssembly staat uit.",
};
