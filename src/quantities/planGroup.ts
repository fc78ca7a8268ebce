import type { Grains } from "../cutplan/piece.ts";
import type { LengthAtHand, Plan, PlanInput, PlanProblem } from "../cutplan/plan.ts";
import { plannedBefore } from "../cutplan/plannedBefore.ts";
import { problemsOf } from "../cutplan/problems.ts";
import {
  type Choices,
  cutKey,
  mod,
  type NamedPiece,
  type PlannedCloth,
  piecesOf,
  type RoomCut,
  seriesKey,
} from "./cutPieces.ts";
import { trialLength } from "./fits/trialLength.ts";

/** A plan of all pieces of one group, the pieces by id, and those that no plan can place. */
export interface GroupPlan {
  /** Null where the lengths at hand do not hold the pieces. */
  readonly run: Run | null;
  readonly choices: Choices;
  /** What the plan came to before the choices: null where there was nothing to choose. */
  readonly unchosen: Grains | null;
  readonly problems: readonly (PlanProblem & { readonly from: RoomCut })[];
  /** Pieces for which the lengths at hand had no place left; empty where they hold all. */
  readonly unplaced: readonly NamedPiece[];
  /** The lengths planned on, where they have arrived. */
  readonly atHand: readonly LengthAtHand[];
}

export interface GroupPlanInput {
  readonly cloth: PlannedCloth;
  readonly cuts: readonly RoomCut[];
  /** The longest single length to be had, less what is lost before its pattern point; null: no limit. */
  readonly maxLength: Grains | null;
  /** Lengths that have arrived; then nothing is chosen anew. */
  readonly lengths?: readonly LengthAtHand[];
  readonly choices?: Choices;
}

const NOTHING_CHOSEN: Choices = { phases: new Map(), instead: new Map() };
/** Settings tried in all, and pieces laid in them: few enough for a large project. */
const MOST_TRIALS = 36;
const TRIAL_PIECES = 2400;
/** Up to so many pieces the plan without the choices is made as well, to say what they save. */
const COMPARED_PIECES = 80;

/**
 * Plans the pieces of one cloth together. Where the items leave it open at which pattern point a series of level pieces stands, or
 * which rectangle a bias reserve is, each is chosen in turn by what makes the plan shortest. Deterministic.
 */
export function planGroup(input: GroupPlanInput): GroupPlan {
  const problems = new Map<string, PlanProblem & { from: RoomCut }>();
  const cuts = placeable(input, problems);
  const given = input.choices;
  const first = given ?? NOTHING_CHOSEN;
  const options = openChoices(cuts, input.cloth);
  const open = given === undefined && input.lengths === undefined && options.length > 0;
  const choices = open ? choose(input, cuts, options) : first;
  const chosen = open ? runPlan(input, cuts, choices).run : null;
  const compared = chosen === null || chosen.pieces.size <= COMPARED_PIECES;
  const plain = compared ? runPlan(input, cuts, first) : null;
  const base = plain?.run ?? null;
  const better = chosen !== null && (base === null || chosen.plan.length < base.plan.length);
  return {
    run: better ? chosen : base,
    choices: better ? choices : first,
    unchosen: open && base ? base.plan.length : null,
    problems: [...problems.values()],
    atHand: input.lengths ?? [],
    unplaced: chosen === null ? (plain?.unplaced ?? []) : [],
  };
}

/** The cuts that can be placed; the others go among the problems. */
function placeable(
  input: GroupPlanInput,
  problems: Map<string, PlanProblem & { from: RoomCut }>,
): readonly RoomCut[] {
  let cuts = input.cuts;
  for (;;) {
    const named = cuts.flatMap((cut) =>
      piecesOf(cut, input.cloth, input.choices ?? NOTHING_CHOSEN),
    );
    const unplaceable = problemsOf(planInput(input, named));
    if (unplaceable.length === 0) return cuts;
    const bad = new Set<string>();
    for (const problem of unplaceable) {
      const from = named.find((each) => each.piece.id === problem.pieceId)?.from;
      if (!from) continue;
      bad.add(cutKey(from));
      if (!problems.has(cutKey(from))) problems.set(cutKey(from), { ...problem, from });
    }
    cuts = cuts.filter((cut) => !bad.has(cutKey(cut)));
  }
}

function planInput(input: GroupPlanInput, named: readonly NamedPiece[]): PlanInput {
  return {
    usableWidth: input.cloth.usableWidthG,
    pattern: input.cloth.pattern,
    pieces: named.map((each) => each.piece),
    options: {
      maxLength: input.maxLength,
      ...(input.lengths ? { lengths: input.lengths } : {}),
    },
  };
}

export interface Run {
  readonly plan: Plan;
  readonly pieces: ReadonlyMap<string, NamedPiece>;
}

/** No run where pieces find no place: on lengths at hand, or with a rectangle that this cloth cannot hold. */
function runPlan(
  input: GroupPlanInput,
  cuts: readonly RoomCut[],
  choices: Choices,
): { readonly run: Run | null; readonly unplaced: readonly NamedPiece[] } {
  const named = cuts.flatMap((cut) => piecesOf(cut, input.cloth, choices));
  const plan = plannedBefore(planInput(input, named));
  const pieces = new Map(named.map((each) => [each.piece.id, each]));
  if (plan.ok) return { run: { plan, pieces }, unplaced: [] };
  return { run: null, unplaced: plan.problems.flatMap((each) => pieces.get(each.pieceId) ?? []) };
}

/** One thing that is open: how to set it, and the settings worth trying beside the first. */
interface OpenChoice {
  readonly candidates: readonly ((choices: Choices) => Choices)[];
}

function openChoices(cuts: readonly RoomCut[], cloth: PlannedCloth): OpenChoice[] {
  return [...seriesChoices(cuts, cloth), ...insteadChoices(cuts)];
}

/**
 * Pattern points for each series: those at which its pieces begin or end in line with the other pieces in register. With one series
 * alone every point is as good as any.
 */
function seriesChoices(cuts: readonly RoomCut[], cloth: PlannedCloth): OpenChoice[] {
  const vertical = cloth.pattern?.vertical ?? 0;
  if (vertical === 0) return [];
  const series = [...new Set(cuts.flatMap((cut) => seriesKey(cut) ?? []))];
  return series.flatMap((name): OpenChoice[] => {
    const mine = cuts.filter((cut) => seriesKey(cut) === name);
    const others = cuts
      .filter((cut) => seriesKey(cut) !== name)
      .flatMap((cut) => piecesOf(cut, cloth, NOTHING_CHOSEN).slice(0, 1))
      .filter((each) => each.piece.along.rule === "register");
    const own = mine.flatMap((cut) => piecesOf(cut, cloth, NOTHING_CHOSEN)[0] ?? []);
    const points = new Set<Grains>();
    for (const { piece } of others) {
      if (piece.along.rule !== "register") continue;
      const { residue } = piece.along;
      for (const { piece: drop } of own.slice(0, 3)) {
        points.add(mod(residue, vertical));
        points.add(mod(residue + piece.height, vertical));
        points.add(mod(residue - drop.height, vertical));
        points.add(mod(residue + piece.height - drop.height, vertical));
      }
    }
    points.delete(0);
    const candidates = [...points].slice(0, 12).map(
      (point) =>
        (choices: Choices): Choices => ({
          ...choices,
          phases: new Map([...choices.phases, [name, point]]),
        }),
    );
    return candidates.length > 0 ? [{ candidates }] : [];
  });
}

function insteadChoices(cuts: readonly RoomCut[]): OpenChoice[] {
  return cuts.flatMap((cut): OpenChoice[] => {
    const others = cut.cut.instead ?? [];
    if (others.length === 0) return [];
    return [
      {
        candidates: others.map(
          (_, at) =>
            (choices: Choices): Choices => ({
              ...choices,
              instead: new Map([...choices.instead, [cutKey(cut), at]]),
            }),
        ),
      },
    ];
  });
}

function choose(
  input: GroupPlanInput,
  cuts: readonly RoomCut[],
  open: readonly OpenChoice[],
): Choices {
  const { usableWidthG, pattern } = input.cloth;
  const piecesWith = (choices: Choices) =>
    cuts.flatMap((cut) => piecesOf(cut, input.cloth, choices)).map((each) => each.piece);
  const lengthOf = (choices: Choices) => trialLength(usableWidthG, pattern, piecesWith(choices));
  const most = Math.min(
    MOST_TRIALS,
    Math.floor(TRIAL_PIECES / Math.max(1, piecesWith(NOTHING_CHOSEN).length)),
  );
  let best = NOTHING_CHOSEN;
  let length = lengthOf(best);
  let trials = 0;
  for (const choice of open) {
    const from = best;
    for (const candidate of choice.candidates) {
      if (trials >= most) return best;
      trials += 1;
      const tried = candidate(from);
      const came = lengthOf(tried);
      if (came < length) {
        length = came;
        best = tried;
      }
    }
  }
  return best;
}
