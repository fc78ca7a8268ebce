import { expect, test } from "vitest";
import { inItemWords } from "../../src/documents/words/inVocabulary.ts";
import { rollerBlindAllowances } from "../../src/items/rollerblind/allowances.ts";
import { loweredTo, rollerBlindSeen } from "../../src/items/rollerblind/area.ts";
import { rollerBlindDrawing } from "../../src/items/rollerblind/drawing.ts";
import { makeRollerBlind } from "../../src/items/rollerblind/pieces.ts";
import { rollerBlindSchema } from "../../src/items/rollerblind/schema.ts";
import { drawingContext, words } from "./drawnItems.ts";
import { clothFacts, fieldsOf, length } from "./tradeContext.ts";
import { hangingContext, type WindowAsk, windowFacts } from "./windowContext.ts";

// Roller blinds of a patterned cloth. Sums by hand from the usual values; all of them are common practice, no source.

const PRINT = clothFacts({
  id: "print",
  name: "Print",
  usableWidth: length(`54"`),
  repeat: { up: length(`20"`), across: length(`13 1/2"`), match: "straight", fromSelvedge: null },
});
const PLAIN = clothFacts({
  id: "plain",
  name: "Plain",
  usableWidth: length(`54"`),
  mayTurn: true,
});
const WINDOW = windowFacts(`40"`, `60"`, `30"`, `5"`);

function make(raw: Record<string, unknown> = {}, ask: WindowAsk = {}) {
  const fields = fieldsOf(rollerBlindSchema, { "roller-blind": "Kitchen", cloth: "print", ...raw });
  const context = hangingContext(rollerBlindAllowances, {
    cloths: [PRINT, PLAIN],
    window: WINDOW,
    ...ask,
  });
  const made = makeRollerBlind(fields, context);
  return { fields, context, made, codes: made.diagnostics.map((d) => d.code) };
}
const inches = (mm: number | undefined) => Math.round(((mm ?? Number.NaN) / 25.4) * 1000) / 1000;

test("inside its recess: the cloth is narrower by its brackets, and is cut with trimmings, the roller's share and the bar's", () => {
  const { made, codes } = make();
  expect(codes).toEqual([]);
  const { figures } = made;
  // 40 - 2 x 1/8; 60 - 1/8. Cloth: less 1 3/8; cut: and 2 x 1; long: and 10 and 2 1/2, up to 4 repeats of 20.
  expect(
    [
      figures.widthMm,
      figures.dropMm,
      figures.clothWideMm,
      figures.cutWidthMm,
      figures.plainCutLengthMm,
      figures.cutLengthMm,
    ].map(inches),
  ).toEqual([39.75, 59.875, 38.375, 40.375, 72.375, 80]);
  expect(inches(figures.headAboveFloorMm)).toBe(90);
  const [cut] = made.cuts;
  expect(made.cuts).toHaveLength(1);
  expect(cut).toMatchObject({ piece: "roller blind", surface: "face", count: 1, mayTurn: false });
  // A motif in the middle of the width; blinds of one drop level with each other.
  expect(cut?.across).toMatchObject({ how: "motif-at" });
  expect(cut?.along.how).toBe("level");
  expect(made.materials.map((m) => m.text.replace(/\s/g, " "))).toEqual([
    "1 roller of 39 3/4″, spring",
    "1 blind bar of 38 3/8″",
  ]);
});

test("a stiffened cloth is not joined: too wide is an error that says what else there is", () => {
  const wide = make({ width: `60"`, mount: "outside" });
  expect(wide.codes).toContain("roller-blind-wider-than-cloth");
  expect(wide.made.cuts).toEqual([]);
  // 60 - 1 3/8 + 2 = 60 5/8 across; run sideways 40 + 10 + 2 1/2 must lie across 54.
  const ask = { width: `60"`, drop: `40"`, mount: "outside", railroad: "yes" };
  const turned = make(ask);
  expect(turned.codes).toEqual([]);
  expect(turned.made.cuts.map((c) => [inches(c.width.toMm()), inches(c.height.toMm())])).toEqual([
    [52.5, 60.625],
  ]);
  expect(turned.made.cuts[0]?.across).toEqual({ how: "free" });
  expect(turned.made.questions.join(" ")).toMatch(/run sideways, with its pattern/);
  expect(make({ ...ask, drop: `42"` }).codes).toEqual(["railroad-too-long"]);
  // A plain cloth may be turned by itself.
  const plain = make({ cloth: "plain", width: `60"`, drop: `40"`, mount: "outside" });
  expect(plain.codes).toEqual([]);
  expect(plain.made.cuts[0]?.mayTurn).toBe(true);
  expect(make({ width: `2"`, mount: "outside" }).codes).toContain("roller-blind-too-narrow");
});

test("its maker reads what is trimmed and what stays on the roller; a chain has its caution, a spring none", () => {
  const read = (raw: Record<string, unknown>) => {
    const { fields, made, context } = make(raw);
    const drawn = drawingContext(context);
    const sheet = rollerBlindDrawing.sheet(fields, made, drawn);
    const fit = rollerBlindDrawing.fitting?.(fields, made, {
      ...drawn,
      window: WINDOW,
      box: null,
      on: null,
      hangsOn: null,
      assumed: [],
    });
    return {
      sheet: sheet.groups.flatMap((g) => g.lines).join(" "),
      drawing: rollerBlindDrawing.workshop(fields, made, drawn)[0],
      fit: [...(fit?.groups.flatMap((g) => g.lines) ?? []), ...(fit?.questions ?? [])].join(" "),
      asks: made.questions.join(" "),
    };
  };
  const spring = read({});
  expect(spring.sheet).toMatch(/Trim 1″ off each side to 38\s3\/8″/);
  expect(spring.sheet).toMatch(/10″ at the head stays on the roller, 2\s1\/2″ at the foot/);
  expect(spring.sheet).not.toMatch(/Safety device/);
  expect(spring.asks).toMatch(/Who stiffens the cloth/);
  expect(spring.drawing?.dimensions.map((d) => d.text.replace(/\s/g, " "))).toEqual([
    "38 3/8″ finished",
    "40 3/8″ cut",
    "72 3/8″ cut",
    "10″",
    "59 7/8″ drop",
    "2 1/2″",
  ]);
  expect(words(spring.drawing?.shapes ?? [])).toEqual([]);
  const chain = read({ operation: "chain", roll: "before" });
  expect(chain.sheet).toMatch(/Safety device fitted to the wall, no free loop/);
  expect(chain.sheet).toMatch(/before the roller: its face is outside/);
  expect(chain.fit).toMatch(/no free loop, out of a child's reach/);
  expect(chain.fit).toMatch(/At which side is the chain/);
});

test("half let down as it is drawn; raised hardly anything is seen of it", () => {
  const { fields, made } = make();
  const area = (hung?: "open" | "closed") =>
    rollerBlindSeen(fields, made, hung)[0]?.areaMm2 as number;
  const wide = 38.375 * 25.4;
  expect(area("closed")).toBeCloseTo(wide * 59.875 * 25.4, 3);
  expect(area()).toBeCloseTo(wide * loweredTo(59.875 * 25.4), 3);
  expect(area("open")).toBeCloseTo(wide * 100, 3);
  const drawing = rollerBlindDrawing.elevation(fields, made, drawingContext(make().context));
  expect([inches(drawing?.widthMm), inches(drawing?.heightMm)]).toEqual([39.75, 59.875]);
});

test("an American reads of a shade", () => {
  expect(inItemWords("Blinds of one drop are cut alike.", "roller-blind", "en-US")).toBe(
    "Shades of one drop are cut alike.",
  );
});

test("of a striped cloth the sheet says which stripe stands in the middle; of several alike it speaks of their cloth", () => {
  const TICKING = clothFacts({
    id: "ticking",
    name: "Ticking",
    usableWidth: length(`54"`),
    // A stripe along the cloth comes again across it alone.
    repeat: { up: length(`0"`), across: length(`6"`), match: "free", fromSelvedge: length(`3"`) },
  });
  const read = (raw: Record<string, unknown>) => {
    const { fields, context, made } = make(raw, { cloths: [PRINT, TICKING] });
    const sheet = rollerBlindDrawing.sheet(fields, made, drawingContext(context));
    return sheet.groups.flatMap((g) => g.lines).join(" ");
  };
  const striped = read({ cloth: "ticking", count: "2" });
  expect(striped).toMatch(/Stripe in the middle of the width: the one whose middle lies 3″/);
  expect(striped).not.toContain("Motif");
  expect(striped).toContain("Their cloth");
  expect(read({})).toContain("Motif in the middle of the width.");
});
