import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { diagnostic } from "../diagnostics/diagnostic.ts";
import type { Swatch } from "../swatches/swatch.ts";
import type { Finding } from "./finding.ts";
import type { FindingInput } from "./findingInput.ts";
import { colourFindings } from "./findings/colours.ts";
import { contactFindings } from "./findings/contact.ts";
import { fitnessFindings } from "./findings/fitness.ts";
import { ladderFindings } from "./findings/ladder.ts";
import { lightFindings } from "./findings/light.ts";
import { mainClothFindings } from "./findings/mainCloth.ts";
import { plainFindings } from "./findings/plain.ts";
import { swatchFindings } from "./findings/swatches.ts";
import { type Ladder, motifLadder } from "./ladder.ts";
import { type RoomPalette, roomPalette } from "./palette.ts";
import { type RoleOf, rolesOf } from "./roles.ts";
import type { SchemeInput } from "./schemeInput.ts";
import { type Carried, carriedColours, type SharePart, sharesOfRoom } from "./seenColours.ts";

/** The mix of a room, judged. */
export interface RoomScheme {
  readonly palette: RoomPalette;
  readonly roles: readonly RoleOf[];
  readonly ladder: Ladder;
  /** What is seen, in a hundred parts, largest first. */
  readonly shares: readonly SharePart[];
  readonly carried: readonly Carried[];
  /** Share of all seen surface that is plain, 0 to 1; null where nothing is known of it. */
  readonly plainShare: number | null;
  readonly findings: readonly Finding[];
  readonly diagnostics: readonly Diagnostic[];
}

/** Plain surface as a share of all that is seen: paint, bare floor and plain cloths against patterned ones. */
export function plainShareOf(input: SchemeInput): number | null {
  let plain = 0;
  let all = 0;
  for (const part of input.seen) {
    const swatch: Swatch | undefined = part.cloth
      ? input.swatches.get(part.cloth)
      : part.object
        ? input.objects.get(part.object)
        : undefined;
    if (!part.colour && !swatch) continue;
    all += part.areaMm2;
    const isPlain =
      part.colour !== null || swatch?.kind === "plain" || swatch?.kind === "textured-plain";
    if (isPlain) plain += part.areaMm2;
  }
  return all > 0 ? plain / all : null;
}

const FAMILIES = [
  mainClothFindings,
  ladderFindings,
  plainFindings,
  colourFindings,
  contactFindings,
  lightFindings,
  fitnessFindings,
  swatchFindings,
];

/** Marks the findings that `accept` waives, and reports a waiver for what does not occur. */
function waive(
  input: SchemeInput,
  findings: readonly Finding[],
): { findings: Finding[]; diagnostics: Diagnostic[] } {
  const waivers = input.room.fields.accept ?? [];
  const used = new Set<number>();
  const out = findings.map((finding): Finding => {
    const at = waivers.findIndex(
      (w) =>
        w.finding === finding.code &&
        (w.of === undefined ||
          (w.of.length === finding.of.length && w.of.every((id) => finding.of.includes(id)))),
    );
    const waiver = waivers[at];
    if (!waiver || finding.level === "works") return finding;
    used.add(at);
    return { ...finding, accepted: waiver.because };
  });
  const diagnostics = waivers.flatMap((w, at) =>
    used.has(at)
      ? []
      : [
          diagnostic(
            input.room.place(["accept", at]),
            "waiver-unused",
            `Nothing here needs the waiver of ${w.finding}${w.of ? ` for ${w.of.join(", ")}` : ""}.`,
            {
              severity: "warning",
              hint: "What it overruled no longer occurs: take the line out.",
            },
          ),
        ],
  );
  return { findings: out, diagnostics };
}

/** The scheme of one room: palette, roles, ladder, shares, where colours are carried, and the findings with her waivers applied. */
export function roomScheme(input: SchemeInput): RoomScheme {
  const roles = rolesOf(input);
  const mainId = roles.find((r) => r.role === "main")?.cloth;
  const palette = roomPalette(input, (mainId ? input.swatches.get(mainId) : undefined) ?? null);
  const ladder = motifLadder(roles);
  const shares = sharesOfRoom(input, palette.colours);
  const carried = carriedColours(input, palette.colours);
  const plainShare = plainShareOf(input);
  const all: FindingInput = {
    ...input,
    palette,
    roles,
    ladder,
    shares,
    carried,
    plainShare,
  };
  const { findings, diagnostics } = waive(
    input,
    FAMILIES.flatMap((family) => family(all)),
  );
  return {
    palette,
    roles,
    ladder,
    shares,
    carried,
    plainShare,
    findings,
    diagnostics,
  };
}
