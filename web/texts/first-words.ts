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

/** In the page itself, for when none of its scripts runs: a host has changed one, or it is missing. */
export const notStarted: Record<Language, string> = {
  en: "Saddlerule has not started. If this stays, one of its files is missing or was changed on the way.",
  de: "Saddlerule ist nicht gestartet. Bleibt das so, fehlt eine Datei oder wurde unterwegs verändert.",
  fr: "Saddlerule n’a pas démarré. Si cela dure, un fichier manque ou a été modifié en route.",
  es: "Saddlerule no ha arrancado. Si sigue así, falta un archivo o se ha cambiado por el camino.",
  nl: "Saddlerule is niet gestart. Blijft dit zo, dan ontbreekt een bestand of is het onderweg veranderd.",
};
