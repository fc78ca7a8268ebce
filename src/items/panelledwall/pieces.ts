import Fraction from "fraction.js";
import type { Length } from "../../units/length.ts";
import { handbookRows } from "../common/join/handbookRows.ts";
import { newNotes } from "../common/notes.ts";
import type { ItemContext, ItemCut, Made } from "../itemKind.ts";
import type { Panel } from "./layout.ts";
import type { MouldingNeed } from "./moulding.ts";
import { mouldingsOf } from "./mouldings.ts";
import { checkOpenings, openingsIn, type PanelOpening } from "./openings.ts";
import { type PanelCloth, type PanelShows, panelCloths } from "./panelCloth.ts";
import type { PanelledWallFields } from "./schema.ts";
import { panelMeasures, setOut, setOutWorking } from "./setOut.ts";

export interface PanelledWallMade extends Made {
  readonly width: Length;
  readonly height: Length;
  readonly margin: Length;
  readonly moulding: Length;
  readonly panels: readonly Panel[];
  readonly need: MouldingNeed | null;
  readonly stock: Length;
  /** What stands in the middle of each panel. */
  readonly shows: PanelShows;
  /** Of one panel of each row, its cloth as cut; empty for painted panels. */
  readonly cloths: readonly PanelCloth[];
  /** What stands in the panelled wall, from its upper left corner. */
  readonly openings: readonly PanelOpening[];
}

/**
 * Panels set out evenly, their mouldings in lengths as sold, and the cloth that is stretched in them: field (panel less its moulding) and
 * a turn-in on each edge. Panels that meet a window or a door are told. Exact lengths; lengths of moulding are counted up.
 */
export function makePanelledWall(
  fields: PanelledWallFields,
  context: ItemContext,
): PanelledWallMade {
  const notes = newNotes();
  const measures = panelMeasures(fields, context);
  const { width, height, margin, moulding } = measures;
  const stock = fields["moulding-length"] ?? context.length("moulding-length");
  const good = setOut(fields, measures, context, notes);
  const openings = openingsIn(fields, context, width, height);
  checkOpenings(fields, good, openings, context, notes);
  setOutWorking(fields, measures, good, context, notes);
  const { need, materials } = mouldingsOf(fields, good, moulding, stock, context, notes);
  const cloth = panelCloths(fields, measures, good, context, notes);
  const { cuts, shows, cloths } = cloth;
  const first = good[0];
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
    materials: [...materials, ...cloth.materials],
    working: notes.working,
    handbook: handbookOf(cuts, context),
    makingCounts: {
      item: new Fraction(1),
      "square-metre": new Fraction(Math.ceil(Math.round(area / 1e2) / 1e2), 100),
      "square-foot": new Fraction(Math.ceil(Math.round((area / 92903.04) * 1e4) / 1e2), 100),
    },
    questions: notes.questions,
    cautions: fields.cloth ? ["lead-paint", "fire"] : ["lead-paint"],
    estimate: null,
    diagnostics: notes.diagnostics,
    width,
    height,
    margin,
    moulding,
    panels: good,
    need,
    stock,
    shows,
    cloths,
    openings,
  };
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
