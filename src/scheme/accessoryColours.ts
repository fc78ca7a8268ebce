import { type Diagnostic, diagnostic } from "../diagnostics/diagnostic.ts";
import { nearest } from "../fields/suggest.ts";
import type { RoomPalette } from "./palette.ts";
import type { SchemeInput } from "./schemeInput.ts";

/**
 * Colours of accessories that the palette lacks, each at its line: an error where the palette is a list in the room file, since one of
 * the two is misspelt; a warning where the colours were drawn from a photograph, and can be drawn otherwise another day.
 */
export function checkAccessoryColours(input: SchemeInput, palette: RoomPalette): Diagnostic[] {
  const names = palette.colours.map((c) => c.name);
  const known = new Set(names.map((n) => n.toLowerCase()));
  const fixed = palette.source.from === "room-file";
  if (names.length === 0) return [];
  return (input.room.fields.accessories ?? []).flatMap((accessory, at) =>
    (accessory.colours ?? []).flatMap((name, place) => {
      if (known.has(name.toLowerCase())) return [];
      const near = nearest(
        name.toLowerCase(),
        names.map((n) => n.toLowerCase()),
      );
      const meant = names.find((n) => n.toLowerCase() === near);
      return [
        diagnostic(
          input.room.place(["accessories", at, "colours", place]),
          "accessory-colour-unknown",
          `The palette of this room has no colour “${name}”.`,
          {
            severity: fixed ? "error" : "warning",
            actual: name,
            expected: names.join(", "),
            hint: meant ? `Did you mean ${meant}?` : `Its colours are: ${names.join(", ")}.`,
          },
        ),
      ];
    }),
  );
}
