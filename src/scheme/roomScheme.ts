import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { diagnostic } from "../diagnostics/diagnostic.ts";
import { wordsIn } from "../units/spelling.ts";
import { checkAccessoryColours } from "./accessoryColours.ts";
import type { Finding } from "./finding.ts";
import type { FindingInput } from "./findingInput.ts";
import { careFindings } from "./findings/care.ts";
import { collectionFindings } from "./findings/collection.ts";
import { colourFindings } from "./findings/colours.ts";
import { contactFindings } from "./findings/contact.ts";
import { fastnessFindings } from "./findings/fastness.ts";
import { fitnessFindings } from "./findings/fitness.ts";
import { fromAnchorFindings } from "./findings/fromAnchor.ts";
import { ladderFindings } from "./findings/ladder.ts";
import { layerFindings } from "./findings/layers.ts";
import { lightFindings } from "./findings/light.ts";
import { mainClothFindings } from "./findings/mainCloth.ts";
import { plainFindings } from "./findings/plain.ts";
import { priceFindings } from "./findings/prices.ts";
import { readyFindings } from "./findings/ready.ts";
import { restrainedFindings } from "./findings/restrained.ts";
import { safetyFindings } from "./findings/safety.ts";
import { sizeFindings } from "./findings/sizes.ts";
import { swatchFindings } from "./findings/swatches.ts";
import { traditionFindings } from "./findings/traditions.ts";
import { viewFindings } from "./findings/views.ts";
import { weightFindings } from "./findings/weight.ts";
import { type Ladder, motifLadder } from "./ladder.ts";
import { type RoomPalette, roomPalette } from "./palette.ts";
import { type SchemePhase, schemePhases } from "./phases.ts";
import { type RoleOf, rolesOf } from "./roles.ts";
import type { SchemeInput } from "./schemeInput.ts";
import { type Carried, carriedColours, type SharePart, sharesOfRoom } from "./seenColours.ts";
import { type Tradition, traditionsOf } from "./traditions.ts";
import { type ClothView, clothViews } from "./views.ts";
import {
  knownShareOf,
  type PlaceShares,
  plainShareOf,
  sharesByWall,
  sharesByZone,
} from "./zones.ts";

/** The mix of a room, judged. */
export interface RoomScheme {
  readonly palette: RoomPalette;
  readonly roles: readonly RoleOf[];
  readonly ladder: Ladder;
  /** What is seen, in a hundred parts, largest first. */
  readonly shares: readonly SharePart[];
  readonly carried: readonly Carried[];
  /** How much of what is seen has a known colour, 0 to 1: a bare floor without a colour is left out of every share. */
  readonly knownShare: number;
  /** Share of all seen surface that is plain, 0 to 1; null where nothing is known of it. */
  readonly plainShare: number | null;
  /** The same with curtains closed and blinds let down. */
  readonly plainClosed: number | null;
  /** The shares of each height, and of each wall. */
  readonly byZone: readonly PlaceShares[];
  readonly byWall: readonly PlaceShares[];
  /** Patterned cloths from the door, the seat and the hand. */
  readonly views: readonly ClothView[];
  readonly traditions: readonly Tradition[];
  readonly phases: readonly SchemePhase[];
  readonly findings: readonly Finding[];
  readonly diagnostics: readonly Diagnostic[];
}

/** Every family of findings, in the order in which they are shown. To add one, add a line. */
const FAMILIES = [
  mainClothFindings,
  traditionFindings,
  ladderFindings,
  plainFindings,
  colourFindings,
  restrainedFindings,
  fromAnchorFindings,
  collectionFindings,
  contactFindings,
  lightFindings,
  viewFindings,
  sizeFindings,
  fitnessFindings,
  weightFindings,
  fastnessFindings,
  careFindings,
  layerFindings,
  safetyFindings,
  swatchFindings,
  priceFindings,
  readyFindings,
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
  const traditions = traditionsOf(input, roles);
  const ladder = motifLadder(roles, traditions.together);
  const shares = sharesOfRoom(input, palette.colours);
  const carried = carriedColours(input, palette.colours);
  const plainShare = plainShareOf(input, input.seen);
  const knownShare = knownShareOf(input);
  const plainClosed = plainShareOf(input, input.closed);
  const all: FindingInput = {
    ...input,
    palette,
    roles,
    ladder,
    traditions,
    shares,
    carried,
    knownShare,
    plainShare,
    plainClosed,
    say: wordsIn(input.language),
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
    knownShare,
    plainShare,
    plainClosed,
    byZone: sharesByZone(input, palette.colours),
    byWall: sharesByWall(input, palette.colours),
    views: clothViews(input, roles),
    traditions: traditions.found,
    phases: schemePhases(input, palette.colours, roles),
    findings,
    diagnostics: [...checkAccessoryColours(input, palette), ...diagnostics],
  };
}
