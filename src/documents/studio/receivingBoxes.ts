import { type Delivery, type MeasuredAs, measuredAs } from "../../sourcing/deliveries.ts";
import type { Length } from "../../units/length.ts";
import { printMeasured } from "../../units/printLength.ts";
import type { ProjectData } from "../projectData.ts";
import { shortDate } from "../words/dates.ts";
import { type Markup, marked } from "../words/marks.ts";

/** A box to write in; its value is what came already, else empty. */
export interface Box {
  readonly label: string;
  readonly value: Markup;
}

/** The boxes of one length, roll or piece that comes, and those of its flaws, a row each. */
export interface BoxRows {
  readonly measures: readonly Box[];
  readonly flaws: readonly (readonly Box[])[];
  /** True of what is still to come, and so to be ticked off. */
  readonly isOpen: boolean;
}

type Receipt = NonNullable<Delivery["arrived"]>["receipts"][number];

interface Asked {
  readonly label: string;
  readonly value: (receipt: Receipt, say: (length: Length) => string) => string | undefined;
}

const LOT: Asked = { label: "Lot", value: (r) => r.lot };
const LENGTH: Asked = { label: "Length", value: (r, say) => say(r.length) };
const WIDTH: Asked = { label: "Width", value: (r, say) => r.width && say(r.width) };
const REPEAT: Asked = { label: "Repeat", value: (r, say) => r.repeat && say(r.repeat) };
const MOTIF: Asked = {
  label: "First motif",
  value: (r, say) => r["first-motif"] && say(r["first-motif"]),
};
const CAME: Asked = { label: "Came on", value: (r) => r.on };
const BY: Asked = { label: "Checked by", value: () => undefined };

const MEASURES: Readonly<Record<MeasuredAs, readonly Asked[]>> = {
  patterned: [LOT, LENGTH, WIDTH, REPEAT, MOTIF, CAME, BY],
  plain: [LOT, LENGTH, WIDTH, CAME, BY],
  trim: [LOT, LENGTH, CAME, BY],
  rolls: [
    { ...LOT, label: "Batch" },
    { ...LENGTH, label: "Length, all rolls" },
    { label: "Rolls", value: () => undefined },
    { ...CAME },
    BY,
  ],
};

const FLAW = ["Flaw: from end", "How long", "From the left", "How wide", "What it is"];

/** What came already, filled in, and below it empty boxes while more is to come. */
export function boxesOf(data: ProjectData, delivery: Delivery): BoxRows[] {
  const { units, language } = data.studio.fields;
  const say = (length: Length): string => printMeasured(length, units);
  const asked = MEASURES[measuredAs(delivery)];
  const came = (delivery.arrived?.receipts ?? []).map(
    (receipt): BoxRows => ({
      isOpen: false,
      measures: asked.map(({ label, value }) => {
        const text = value(receipt, say) ?? "";
        return {
          label,
          value: marked(label === CAME.label && text ? shortDate(text, language) : text),
        };
      }),
      flaws: (receipt.flaws ?? []).map((flaw) => {
        const { from, length, "from-left": left, width, what } = flaw;
        const values = [say(from), say(length), left && say(left), width && say(width), what];
        return FLAW.map((label, at) => ({ label, value: marked(values[at] ?? "") }));
      }),
    }),
  );
  if (delivery.arrived?.isAll) return came;
  const empty = (label: string): Box => ({ label, value: marked("") });
  const isCut = delivery.need.planned !== null;
  const flaws = isCut ? FLAW : ["Flaws: where, and what"];
  return [
    ...came,
    { isOpen: true, measures: asked.map((a) => empty(a.label)), flaws: [flaws.map(empty)] },
  ];
}
