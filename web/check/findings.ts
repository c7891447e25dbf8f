// What a check page finds, one sentence each, for the webmaster: in English, as the console is.

export type Kind = "good" | "note" | "wrong";

export interface Finding {
  kind: Kind;
  what: string;
}

export const good = (what: string): Finding => ({ kind: "good", what });
export const note = (what: string): Finding => ({ kind: "note", what });
export const wrong = (what: string): Finding => ({ kind: "wrong", what });

export function reason(failure: unknown): string {
  return failure instanceof Error ? failure.message : String(failure);
}
