import Fraction from "fraction.js";
import { type Diagnostic, diagnostic } from "../../diagnostics/diagnostic.ts";
import { Length } from "../../units/length.ts";
import { printLength, printSize } from "../../units/printLength.ts";
import { asNeeded, boughtLength } from "../boughtLength.ts";
import { centredPlace, hasMotif } from "../centredMotif.ts";
import { handbookRows } from "../handbookRows.ts";
import type {
  ItemContext,
  ItemCut,
  Made,
  MaterialNeed,
  WallRun,
  WorkingLine,
} from "../itemKind.ts";
import { gapQuestion, type JoinedPart, joinedCuts, joinPiece } from "../joinPiece.ts";
import { layPanels, type Panel } from "./layout.ts";
import { type MouldingNeed, mouldingNeed } from "./moulding.ts";
import type { PanelledWallFields } from "./schema.ts";

export interface PanelledWallMade extends Made {
  readonly width: Length;
  readonly height: Length;
  readonly margin: Length;
  readonly moulding: Length;
  readonly panels: readonly Panel[];
  readonly need: MouldingNeed | null;
  readonly stock: Length;
  readonly centred: boolean;
  /** Of one panel of each row, its cloth as cut; empty for painted panels. */
  readonly cloths: readonly {
    readonly row: number;
    readonly cut: readonly [Length, Length];
    readonly parts: readonly JoinedPart[] | null;
  }[];
  /** What stands in the panelled wall, from its upper left corner. */
  readonly openings: readonly {
    readonly what: string;
    readonly left: Length;
    readonly top: Length;
    readonly width: Length;
    readonly height: Length;
  }[];
}

interface OnWall {
  readonly wall: string;
  readonly "from-left"?: Length;
  readonly height?: Length;
}

/** The wall and place that it is at, or null. */
function wallOf(fields: PanelledWallFields): OnWall | null {
  const at = fields.at as OnWall | undefined;
  return at && typeof at === "object" && "wall" in at && !("floor" in at) ? at : null;
}

/**
 * Panels set out evenly, their mouldings in lengths as sold, and the cloth that is stretched in them: field (panel less its moulding) and
 * a turn-in on each edge. Panels that meet a window or a door are told. Exact lengths; lengths of moulding are counted up.
 */
export function makePanelledWall(
  fields: PanelledWallFields,
  context: ItemContext,
): PanelledWallMade {
  const { units } = context;
  const p = (l: Length) => printLength(l, units);
  const [width, height] = fields.size as [Length, Length];
  const diagnostics: Diagnostic[] = [];
  const questions: string[] = [];
  const working: WorkingLine[] = [];
  const materials: MaterialNeed[] = [];
  const margin = fields.margin ?? context.length("margin");
  const moulding = fields.moulding ?? context.length("moulding");
  const stock = fields["moulding-length"] ?? context.length("moulding-length");
  const rows = fields.rows ?? (fields.lower ? 2 : 1);
  if (rows === 2 && !fields.lower)
    diagnostics.push(
      diagnostic(
        context.place(["rows"]),
        "panels-not-measured",
        "Two rows of panels need the height of the lower ones, and none is written.",
        {
          expected: "lower",
          hint: `Write lower: ${units === "inches" ? '26"' : "65 cm"}, or rows: 1.`,
        },
      ),
    );
  if (rows === 1 && fields.lower)
    diagnostics.push(
      diagnostic(
        context.place(["lower"]),
        "not-of-one-row",
        "There is one row of panels, so lower says nothing.",
        { severity: "warning", hint: "Take it out, or write rows: 2." },
      ),
    );
  const panels =
    rows === 2 && !fields.lower
      ? null
      : layPanels({
          width,
          height,
          panels: fields.panels,
          margin,
          lower: rows === 2 ? (fields.lower as Length) : null,
        });
  const tooNarrow = panels?.find(
    (q) => q.width.compare(moulding.times(2)) <= 0 || q.height.compare(moulding.times(2)) <= 0,
  );
  if ((panels === null && (rows === 1 || fields.lower)) || tooNarrow)
    diagnostics.push(
      diagnostic(
        context.place(["panels"]),
        "panels-do-not-fit",
        `${fields.panels} ${fields.panels === 1 ? "panel" : "panels"} with ${p(margin)} of wall round each and mouldings of ${p(moulding)} leave nothing within on ${printSize([width, height], units)}.`,
        {
          actual: String(fields.panels),
          hint: "Write fewer panels, a smaller margin, or check size: width x height.",
        },
      ),
    );
  const good = tooNarrow ? [] : (panels ?? []);

  const openings = openingsIn(fields, context, width, height);
  if (!wallOf(fields))
    diagnostics.push(
      diagnostic(
        context.place(["at"]),
        "panelled-without-wall",
        "It is not said on which wall the panels are.",
        {
          expected: "at: { wall: …, from-left: …, height: … }",
          hint: `Write for example at: { wall: north, from-left: 0", height: 6" }: its left end, and its foot above the floor.`,
        },
      ),
    );
  for (const opening of openings) {
    const met = good.filter(
      (q) =>
        q.left.isLessThan(opening.left.plus(opening.width)) &&
        q.left.plus(q.width).isMoreThan(opening.left) &&
        q.top.isLessThan(opening.top.plus(opening.height)) &&
        q.top.plus(q.height).isMoreThan(opening.top),
    );
    if (met.length > 0)
      diagnostics.push(
        diagnostic(
          context.place(["panels"]),
          "panel-over-opening",
          `Panel ${met.map((q) => q.number).join(", ")} would run over the ${opening.what}, which is ${p(opening.left)} to ${p(opening.left.plus(opening.width))} from the panelling's left end.`,
          {
            hint: `Panel each side by itself as an item of its own: one ${p(Length.max(opening.left, Length.zero))} wide to the left of the ${opening.what}, and one to its right.`,
          },
        ),
      );
  }

  const first = good[0];
  if (first) {
    working.push({
      what: "Width of a panel",
      sum: `(${p(width)} − ${fields.panels + 1} × ${p(margin)}) ÷ ${fields.panels}`,
      result: p(first.width),
      rounded: null,
    });
    for (const row of [...new Set(good.map((q) => q.row))]) {
      const one = good.find((q) => q.row === row) as Panel;
      working.push({
        what:
          rows === 2
            ? row === 0
              ? "Height of an upper panel"
              : "Height of a lower panel"
            : "Height of a panel",
        sum:
          rows === 2
            ? row === 0
              ? `${p(height)} − 3 × ${p(margin)} − ${p(fields.lower as Length)}`
              : "as written"
            : `${p(height)} − 2 × ${p(margin)}`,
        result: p(one.height),
        rounded: null,
      });
    }
  }

  let need: MouldingNeed | null = null;
  if (good.length > 0 && !moulding.isZero()) {
    const pieces = good.flatMap((q) => [
      { length: q.width, count: 2 },
      { length: q.height, count: 2 },
    ]);
    need = mouldingNeed(pieces, stock, context.length("saw-cut"));
    const longest = Length.max(...pieces.map((x) => x.length));
    if (need === null) {
      diagnostics.push(
        diagnostic(
          context.place([fields["moulding-length"] ? "moulding-length" : "panels"]),
          "moulding-too-short",
          `A side of a panel is ${p(longest)} long, and the moulding is sold in lengths of ${p(stock)}: it would have to be joined.`,
          {
            actual: p(stock),
            expected: `${p(longest)} or more`,
            hint: `Write the longer length that it is sold in, moulding-length: ${p(longest.upTo(units === "inches" ? Length.inches(12) : Length.cm(10)))}, or panels of two rows.`,
          },
        ),
      );
    } else {
      working.push({
        what: "Moulding",
        sum: need.pieces.map((x) => `${x.count} × ${p(x.length)}`).join(" + "),
        result: p(need.total),
        rounded: null,
      });
      working.push({
        what: `Lengths of ${p(stock)}`,
        sum: `longest first, no piece joined, ${p(context.length("saw-cut"))} lost at a cut; none can need less than ${need.atLeast}`,
        result: String(need.lengths),
        rounded: "up to whole lengths",
      });
      materials.push({
        what: "panel moulding",
        cloth: null,
        amount: new Fraction(need.lengths),
        unit: "piece",
        text: `${need.lengths} ${need.lengths === 1 ? "length" : "lengths"} of ${p(stock)} of panel moulding, ${p(moulding)} wide`,
        by: "maker",
      });
      materials.push(asNeeded("pins, adhesive, filler and caulk as the wall needs"));
    }
  }

  const facts = fields.cloth ? context.cloth(fields.cloth) : null;
  const cuts: ItemCut[] = [];
  const cloths: PanelledWallMade["cloths"][number][] = [];
  let centred = false;
  if (fields.cloth && facts?.type === "wallcovering") {
    diagnostics.push(
      diagnostic(
        context.place(["cloth"]),
        "paper-in-panels",
        `${facts.name} is a wallcovering; what is stretched in panels is cloth.`,
        {
          actual: fields.cloth,
          expected: "a cloth",
          hint: "Take cloth out here, and write an item wallpaper on this wall for the paper within the panels.",
        },
      ),
    );
  } else if (fields.cloth) {
    const motif = hasMotif(facts);
    if (fields.motif === "centred" && facts && !motif)
      diagnostics.push(
        diagnostic(
          context.place(["motif"]),
          "no-motif-to-centre",
          `${facts.name} has no repeat on its card, so nothing can be centred.`,
          {
            severity: "warning",
            actual: "centred",
            expected: "as-it-falls",
            hint: "Write the repeat on the cloth's card, or motif: as-it-falls.",
          },
        ),
      );
    centred = motif && fields.motif !== "as-it-falls";
    const turn = context.length("turn-in");
    for (const row of [...new Set(good.map((q) => q.row))]) {
      const one = good.find((q) => q.row === row) as Panel;
      const field = [
        one.width.minus(moulding.times(2)),
        one.height.minus(moulding.times(2)),
      ] as const;
      const cut = [field[0].plus(turn.times(2)), field[1].plus(turn.times(2))] as const;
      const name = rows === 2 ? (row === 0 ? "upper panel" : "lower panel") : "panel";
      const because = `${printSize([one.width, one.height], units)} − 2 × ${p(moulding)} moulding + 2 × ${p(turn)} turn-in each way`;
      const usable = facts?.usableWidth ?? null;
      const wide = usable !== null && cut[0].isMoreThan(usable);
      const turns =
        !centred && facts?.mayTurn === true && usable !== null && !cut[1].isMoreThan(usable);
      const way = fields.join ?? "both-sides";
      const parts =
        wide && usable && !turns
          ? joinPiece(cut[0], usable, context.length("join-turning"), way)
          : null;
      if (wide && !turns && parts === null)
        diagnostics.push(
          diagnostic(
            context.place(["panels"]),
            "piece-wider-than-cloth",
            `The cloth of a panel is ${p(cut[0])} wide as cut; ${facts?.name} is ${p(usable as Length)}.`,
            {
              actual: p(cut[0]),
              hint: "Write more panels, join: both-sides, or choose a wider cloth.",
            },
          ),
        );
      const place = centred && !wide ? centredPlace(facts, ...cut) : null;
      if (place && !place.fits && place.widest)
        diagnostics.push(
          diagnostic(
            context.place(["panels"]),
            "motif-does-not-fit",
            `The cloth of a panel is ${p(cut[0])} wide as cut; on ${facts?.name} the widest piece with a motif in its middle is ${p(place.widest)}.`,
            {
              actual: p(cut[0]),
              expected: `${p(place.widest)} or less`,
              hint: "Write more panels, motif: as-it-falls, or choose a wider cloth.",
            },
          ),
        );
      if (parts && !fields.join)
        questions.push(
          `The ${name} is wider than its cloth and nothing is said of joins: a whole width in the middle and equal strips at the sides are taken.`,
        );
      const gap = parts && centred ? gapQuestion(facts, name) : null;
      if (gap) questions.push(gap);
      const base = {
        piece: name,
        surface: "panel",
        cloth: fields.cloth,
        width: cut[0],
        height: cut[1],
        count: fields.panels,
        because,
      };
      const series = `${fields["panelled-wall"]}, ${name}`;
      const matched = facts?.repeat != null && facts.repeat.match !== "free";
      if (parts) cuts.push(...joinedCuts(parts, base, facts, centred, series));
      else
        cuts.push({
          ...base,
          mayTurn: !centred && !matched && (facts?.mayTurn ?? false),
          across: place?.across ?? { how: "free" },
          // Panels of a row show the same part of the pattern at one height.
          along: place?.along ?? (matched ? { how: "level", series, joined: 0 } : { how: "free" }),
        });
      cloths.push({ row, cut, parts });
      working.push({
        what: `Cloth of a ${name}, ${fields.panels} of them`,
        sum: because,
        result: printSize(cut, units),
        rounded: null,
      });
      const round = field[0].plus(field[1]).times(2).times(fields.panels);
      materials.push({
        ...boughtLength(rows === 2 ? `battens for the ${name}s` : "battens", round, units),
      });
      materials.push({
        what: `wadding ${printSize(field, units)}`,
        cloth: null,
        amount: new Fraction(fields.panels),
        unit: "piece",
        text: `${fields.panels} × wadding ${printSize(field, units)}`,
        by: "maker",
      });
      if (fields.trim) materials.push(boughtLength(fields.trim, round, units));
    }
    materials.push(asNeeded("staples, and tacks for the head"));
    questions.push("Which sockets, switches and radiators stand within the panels?");
  } else if (good.length > 0) {
    questions.push("Which sockets and switches fall on a moulding?");
  }
  const area = width.toMm() * height.toMm();
  return {
    figures: {
      panels: good.length,
      panelWidthMm: first?.width.toMm() ?? 0,
      mouldingMm: need?.total.toMm() ?? 0,
      mouldingLengths: need?.lengths ?? 0,
      mouldingLengthsAtLeast: need?.atLeast ?? 0,
    },
    cuts,
    materials,
    working,
    handbook: handbookOf(cuts, context),
    makingCounts: {
      item: new Fraction(1),
      "square-metre": new Fraction(Math.ceil(Math.round(area / 1e2) / 1e2), 100),
      "square-foot": new Fraction(Math.ceil(Math.round((area / 92903.04) * 1e4) / 1e2), 100),
    },
    questions,
    cautions: fields.cloth ? ["lead-paint", "fire"] : ["lead-paint"],
    estimate: null,
    diagnostics,
    width,
    height,
    margin,
    moulding,
    panels: good,
    need,
    stock,
    centred,
    cloths,
    openings,
  };
}

/** Windows and doors within the panelled wall, from its upper left corner. */
function openingsIn(
  fields: PanelledWallFields,
  context: ItemContext,
  width: Length,
  height: Length,
): PanelledWallMade["openings"] {
  const at = wallOf(fields);
  const runs: readonly WallRun[] = at ? (context.runs([at.wall]) ?? []) : [];
  if (runs.length === 0) return [];
  // Without from-left it stands at the middle of its wall.
  const length = Length.max(...runs.map((run) => run.fromLeft.plus(run.width)));
  const left = at?.["from-left"] ?? length.minus(width).dividedBy(2);
  const foot = at?.height ?? Length.zero;
  return runs.flatMap((run) =>
    run.openings.flatMap((o) => {
      const from = o.fromLeft.minus(left);
      const top = foot.plus(height).minus(o.foot).minus(o.height);
      const inside =
        from.isLessThan(width) &&
        from.plus(o.width).isMoreThan(Length.zero) &&
        top.isLessThan(height) &&
        top.plus(o.height).isMoreThan(Length.zero);
      return inside ? [{ what: o.what, left: from, top, width: o.width, height: o.height }] : [];
    }),
  );
}

/** Panels in rows across the cloth, matched ones up to whole repeats. */
function handbookOf(cuts: readonly ItemCut[], context: ItemContext): Made["handbook"] {
  const id = cuts[0]?.cloth;
  const facts = id ? context.cloth(id) : null;
  if (!id || !facts?.usableWidth) return [];
  const pieces = cuts.flatMap((c) =>
    Array.from({ length: c.count }, () => ({
      width: c.width,
      length: c.along.how === "free" || !facts.repeat ? c.height : c.height.upTo(facts.repeat.up),
    })),
  );
  const rows = handbookRows(pieces, facts.usableWidth);
  return rows ? [{ cloth: id, length: rows }] : [];
}
