import { spellColourName } from "../../colour/colourName.ts";
import { difference } from "../../colour/difference.ts";
import type { Swatch } from "../../swatches/swatch.ts";
import { isPlain } from "../../swatches/swatch.ts";
import type { Finding } from "../finding.ts";
import type { FindingInput } from "../findingInput.ts";
import { isNeutral, SAME_COLOUR } from "../palette.ts";
import { finding, listed } from "./make.ts";

/** Colours of one cloth that another has too, by their photographs; near-neutral grounds do not count. */
function shared(one: Swatch, other: Swatch): string[] {
  return one.colours
    .filter(
      (c) =>
        !isNeutral(c.hex) && other.colours.some((o) => difference(c.hex, o.hex) <= SAME_COLOUR),
    )
    .map((c) => c.name);
}

/**
 * One range: its cloths are of one collection, and their shared colours are confirmed from the photographs. Plains may come from
 * elsewhere. Only for rooms of that approach; common practice, no source.
 */
export function collectionFindings(input: FindingInput): Finding[] {
  const { say, room } = input;
  if (room.fields.approach !== "collection") return [];
  const cloths = input.roles.flatMap((role) => {
    const swatch = input.swatches.get(role.cloth);
    const range = input.cloths.get(role.cloth)?.fields.collection ?? null;
    return swatch ? [{ id: role.cloth, name: role.name, swatch, range }] : [];
  });
  const counts = new Map<string, number>();
  for (const c of cloths) if (c.range) counts.set(c.range, (counts.get(c.range) ?? 0) + 1);
  const range = [...counts].sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1))[0]?.[0];
  if (!range) return [];
  const inside = cloths.filter((c) => c.range === range);
  const others = cloths.filter((c) => c.range !== range && !isPlain(c.swatch) && !c.swatch.animal);
  const out: Finding[] = others.map((c) =>
    finding(
      room,
      "collection-mixed",
      "worth-a-look",
      {
        message: say`${c.name} is not of ${range}, the range of the others.`,
        reason: say`A room from one range gets its ease from the range's own colours; a pattern from elsewhere has to be matched by eye (common practice). Plains are free.`,
      },
      { range, own: c.range ?? "" },
      [c.id],
    ),
  );
  const apart = inside.filter(
    (c) =>
      inside.length > 1 &&
      c.swatch.colours.some((x) => !isNeutral(x.hex)) &&
      !inside.some((o) => o !== c && shared(c.swatch, o.swatch).length > 0),
  );
  const unseen = inside.filter((c) => c.swatch.coloursFrom !== "measured");
  for (const c of apart)
    out.push(
      finding(
        room,
        "collection-apart",
        "worth-a-look",
        {
          message: say`${c.name} is of ${range}, but its photograph shows no colour that another cloth of it has.`,
          reason: say`Colourings of one range differ; the shared ones are named on its labels (common practice). Lay the samples side by side.`,
        },
        { range, shared: 0 },
        [c.id],
      ),
    );
  if (inside.length > 1 && apart.length === 0) {
    const names = [
      ...new Set(
        inside.flatMap((c) => inside.flatMap((o) => (o === c ? [] : shared(c.swatch, o.swatch)))),
      ),
    ].sort();
    const proof =
      unseen.length === 0
        ? say`confirmed from their photographs`
        : say`as far as ${listed(unseen.map((c) => c.name))} can be judged without a measured photograph`;
    out.push(
      finding(
        room,
        "collection-shared",
        "works",
        {
          message: say`${listed(inside.map((c) => c.name))} are of ${range}${names.length > 0 ? say` and share ${listed(names.map((n) => spellColourName(n, input.language)))}` : ""}, ${proof}.`,
          reason: say`One range with its colours in common is the surest mix there is (common practice).`,
        },
        { range, cloths: inside.length, colours: names.length },
        inside.map((c) => c.id),
      ),
    );
  }
  return out;
}
