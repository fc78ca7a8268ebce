import { type Diagnostic, diagnostic } from "../../diagnostics/diagnostic.ts";
import type { ItemContext } from "../itemKind.ts";

/** Of what hangs from something whose length is its own key: the code, the key, and the words of the two messages. */
export interface WithoutLength {
  readonly code: string;
  readonly key: "pole" | "board";
  /** `how long the pole or track is`; the piece's name follows. */
  readonly onBed: string;
  /** `how wide these curtains are`. */
  readonly atWindow: string;
  /** A usual length on a bed, and at a window, in both measures. */
  readonly usual: { readonly bed: string; readonly window: string };
}

/** What is said where neither the key nor a window gives the length: on a bed it is that of the bed's side. */
export function withoutLength(
  { place, hangsOn }: Pick<ItemContext, "place" | "hangsOn">,
  { code, key, onBed, atWindow, usual }: WithoutLength,
): Diagnostic {
  const write = (length: string) => `Write for example ${key}: ${length}, `;
  return hangsOn
    ? diagnostic(place([]), code, `Nothing says ${onBed} at ${hangsOn.title}.`, {
        expected: key,
        hint: `${write(usual.bed)}as that side has it.`,
      })
    : diagnostic(place([]), code, `Neither a ${key} nor a window says ${atWindow}.`, {
        expected: `${key}, or at with a window of this room`,
        hint: `${write(usual.window)}or at: and the window's name.`,
      });
}
