import type { Flaw } from "../../cutplan/piece.ts";
import type { Plan, PlanInput } from "../../cutplan/plan.ts";
import { type Fit, fits, type Remnant } from "../../cutplan/remnant/fits.ts";
import type { ClothFacts } from "../../items/itemKind.ts";
import type { ProjectRecord, Records } from "../../records/records.ts";
import { type AnyKind, furnishRoom } from "../../room/furnishRoom.ts";
import type { LookUps } from "../../room/lookUps.ts";
import { Length } from "../../units/length.ts";
import { boughtOf } from "../boughtOf.ts";
import {
  type Choices,
  cutKey,
  mod,
  type PlannedCloth,
  piecesOf,
  plannedCloth,
  type RoomCut,
} from "../cutPieces.ts";
import { grainsDown, grainsNearest, grainsUp, lengthOfGrains } from "../grains.ts";
import { planGroup } from "../planGroup.ts";
import { planOfCloth } from "../planOfCloth.ts";
import type { ClothFits, Makes, Miss, Named, RemnantInHand } from "./found.ts";
import { shortfallOf } from "./nearMiss.ts";

/** What one item cuts from one cloth. */
interface Candidate {
  readonly project: string;
  readonly room: string;
  readonly item: string;
  readonly title: string;
  readonly insteadOf: string | null;
  readonly words: {
    readonly where: string;
    readonly item: string;
    readonly insteadOf: string | null;
  };
  readonly cuts: readonly RoomCut[];
}

interface Tried {
  readonly candidates: readonly Candidate[];
  readonly fit: Fit;
  readonly input: PlanInput;
  readonly remnant: Remnant;
  readonly choices: Choices;
}

/** What is lost on either side of a seam that is unpicked: its turnings and its needle holes; common practice, no source. */
export const SEAM_EACH_SIDE = Length.mm(20);

const NOT_FOR_CUTTING = "The remnant has not been measured and looked over for flaws.";

/**
 * What a remnant can make of what the studio's rooms need: each item by itself that is in this cloth or, worked out anew, could be;
 * and for each room the items in this cloth that fit together, the largest first. Where its pattern begins on the remnant is not
 * known, so a repeat is kept in reserve. `facts` is the cloth; one without a width needs the remnant's.
 */
export function clothFits(
  records: Records,
  projects: readonly ProjectRecord[],
  kinds: readonly AnyKind[],
  lookUps: LookUps,
  facts: ClothFacts,
  remnant: RemnantInHand,
): ClothFits | null {
  const clothWidth = facts.usableWidth ?? remnant.width;
  if (clothWidth === null) return null;
  const width = remnant.width ?? clothWidth;
  const cloth = plannedCloth(facts, clothWidth, grainsDown(clothWidth));
  const candidates = projects.flatMap((project) =>
    candidatesOf(records, project, kinds, lookUps, { ...facts, usableWidth: clothWidth }),
  );
  const attempt = (some: readonly Candidate[]): Tried => tryOn(some, cloth, remnant, width);
  const singles = candidates.map((candidate) => attempt([candidate]));
  const makes: Makes[] = [];
  for (const room of new Set(candidates.map((c) => `${c.project}/${c.room}`))) {
    const own = singles
      .filter(({ candidates: [c] }) => c && `${c.project}/${c.room}` === room && !c.insteadOf)
      .filter(({ fit }) => fit.fits)
      .sort((a, b) => (b.fit.needed ?? 0) - (a.fit.needed ?? 0));
    let together: Tried | null = null;
    for (const {
      candidates: [next],
    } of own) {
      const more = attempt([...(together?.candidates ?? []), next as Candidate]);
      if (more.fit.fits) together = more;
    }
    if (together && together.candidates.length > 1) makes.push(madeOf(together, cloth));
  }
  makes.push(...singles.filter(({ fit }) => fit.fits).map((each) => madeOf(each, cloth)));
  const missed = singles
    .filter(({ fit }) => !fit.fits && fit.missing !== null)
    .sort((a, b) => (a.fit.missing as number) - (b.fit.missing as number))[0];
  return {
    width,
    makes,
    nearestMiss: missed ? missOf(missed) : null,
  };
}

function missOf(missed: Tried): Miss {
  const { holds, of, piece, missing, shift } = shortfallOf(missed.input, missed.remnant);
  const cuts = missed.candidates.flatMap((each) => each.cuts);
  const from = cuts.find((cut) => piece.startsWith(`${cutKey(cut)}/`)) as RoomCut;
  return {
    ...namesOf(missed.candidates),
    missing: lengthOfGrains(missed.fit.missing as number),
    shortfall: {
      holds,
      of,
      piece: from.cut.piece,
      missing: missing === null ? null : lengthOfGrains(missing),
      motifLower: shift === null ? null : lengthOfGrains(shift),
    },
  };
}

/** The remnant for the planner: lengths DOWN to the grain, places to be avoided UP. */
function remnantInGrains(remnant: RemnantInHand, width: Length, cloth: PlannedCloth): Remnant {
  const length = grainsDown(remnant.length);
  const flaw = (left: Length, up: Length, right: Length, top: Length): Flaw => {
    const [x, y] = [Math.max(0, grainsDown(left)), Math.max(0, grainsDown(up))];
    return { x, y, width: grainsUp(right) - x, height: grainsUp(top) - y };
  };
  const vertical = cloth.pattern?.vertical ?? 0;
  const first = remnant.firstMotif;
  return {
    length,
    width: Math.min(grainsDown(width), cloth.usableWidthG),
    // The pattern's origin is a motif's middle: a motif that stands `first` above the end lies at minus that point.
    start: first === null || vertical === 0 ? null : mod(-grainsNearest(first), vertical),
    count: remnant.count,
    flaws: [
      ...remnant.holes.map(({ fromLeft, up, width: w, height }) =>
        flaw(fromLeft, up, fromLeft.plus(w), up.plus(height)),
      ),
      ...remnant.seams.map((at) =>
        flaw(
          at.minus(SEAM_EACH_SIDE),
          Length.zero,
          at.plus(SEAM_EACH_SIDE),
          // The plan may try longer lengths: the seam runs on.
          remnant.length.plus(Length.mm(50_000)),
        ),
      ),
    ],
  };
}

/** Every item of a project that cuts cloth of this type, with what it would cut from this one. */
function candidatesOf(
  records: Records,
  project: ProjectRecord,
  kinds: readonly AnyKind[],
  lookUps: LookUps,
  facts: ClothFacts,
): Candidate[] {
  const instead = (id: string): ClothFacts | null => {
    const own = lookUps.cloth(id);
    return own && own.type === facts.type ? { ...facts, id: own.id } : own;
  };
  const language = records.studio?.fields.language ?? "en-US";
  return project.rooms.flatMap((room) => {
    const furnished = furnishRoom(records, room, kinds, { ...lookUps, cloth: instead });
    return furnished.items.flatMap((item): Candidate[] => {
      const made = boughtOf(item);
      if (made.diagnostics.some((each) => each.severity === "error")) return [];
      const cloths = [...new Set(made.cuts.map((cut) => cut.cloth))].filter(
        (id) => lookUps.cloth(id)?.type === facts.type,
      );
      return cloths.map((id) => ({
        project: project.id,
        room: room.id,
        item: item.record.id,
        title: item.record.title,
        insteadOf: id === facts.id ? null : id,
        words: {
          where: `${project.fields.project}, ${room.fields.room}`,
          item: `${item.record.title}, ${item.kind.words[language].one}`,
          insteadOf: id === facts.id ? null : (records.cloths.get(id)?.fields.cloth ?? id),
        },
        cuts: made.cuts.flatMap((cut, at) =>
          cut.cloth === id ? [{ room: room.id, item: item.record.id, at, cut }] : [],
        ),
      }));
    });
  });
}

function tryOn(
  candidates: readonly Candidate[],
  cloth: PlannedCloth,
  remnant: RemnantInHand,
  width: Length,
): Tried {
  const cuts = candidates.flatMap((each) => each.cuts);
  const group = planGroup({ cloth, cuts, maxLength: null });
  const input = {
    usableWidth: cloth.usableWidthG,
    pattern: cloth.pattern,
    pieces: cuts.flatMap((cut) => piecesOf(cut, cloth, group.choices)).map((each) => each.piece),
    options: {},
  };
  // A plan that leaves pieces out is no plan of these items.
  const plan: Plan | null = group.problems.length === 0 ? (group.run?.plan ?? null) : null;
  const own = remnantInGrains(remnant, width, cloth);
  return { candidates, fit: fits(input, plan, own), input, remnant: own, choices: group.choices };
}

function madeOf({ candidates, fit, choices }: Tried, cloth: PlannedCloth): Makes {
  const cuts = candidates.flatMap((each) => each.cuts);
  const pieces = cuts.flatMap((cut) => piecesOf(cut, cloth, choices));
  const run = fit.plan && {
    plan: fit.plan,
    pieces: new Map(pieces.map((each) => [each.piece.id, each])),
  };
  const group = { run, choices, unchosen: null, problems: [] };
  return {
    ...namesOf(candidates),
    needed: lengthOfGrains(fit.needed ?? 0),
    keeps: fit.keeps,
    plan: planOfCloth(group, cloth, [NOT_FOR_CUTTING], { cloth: "remnant", maker: null, lots: [] }),
  };
}

function namesOf(candidates: readonly Candidate[]): Named {
  const [first] = candidates as [Candidate];
  return {
    project: first.project,
    room: first.room,
    items: candidates.map((each) => each.item),
    titles: candidates.map((each) => each.title),
    insteadOf: first.insteadOf,
    words: { ...first.words, items: candidates.map((each) => each.words.item) },
  };
}
