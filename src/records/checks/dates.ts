import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import { nodeAt, type Path } from "../frontMatter/node.ts";
import { type Card, complain } from "../reading/card.ts";

/** A day that a card may name: how a sentence on it begins, and how it stands within the sentence on a later one. */
interface Step {
  readonly path: Path;
  readonly head: string;
  readonly within: string;
}

const SAMPLE: readonly Step[] = [
  { path: ["sample", "ordered"], head: "This sample was ordered", within: "it was ordered" },
  { path: ["sample", "arrived"], head: "This sample arrived", within: "it arrived" },
  { path: ["sample", "approved"], head: "This sample was approved", within: "it was approved" },
];

const MEASURED: readonly Step[] = [
  { path: ["measured", "on"], head: "This room was measured", within: "the room was measured" },
  {
    path: ["measured", "checked"],
    head: "These measures were checked",
    within: "they were checked",
  },
];

const HINT = "Look which of the two days is wrong; often it is the year.";

/** A card's text where a day of ISO 8601 stands; days so written stand in the order of their letters. */
function dayAt(card: Card, path: Path): string | null {
  const node = nodeAt(card.root, path);
  const text = node?.kind === "text" ? node.text.trim() : "";
  return /^\d{4}-\d{2}-\d{2}$/.test(text) ? text : null;
}

function before(
  card: Card,
  { path, head }: Pick<Step, "path" | "head">,
  day: string,
  other: string,
  otherDay: string,
): Diagnostic {
  return complain(card, path, {
    code: "days-out-of-order",
    severity: "warning",
    message: `${head} on ${day}, before ${other}, on ${otherDay}.`,
    actual: day,
    expected: `${otherDay} or later`,
    hint: HINT,
  });
}

/** Steps that follow one another, each held against the nearest before it of which the day is written. */
function inOrder(card: Card, steps: readonly Step[]): Diagnostic[] {
  const known = steps.flatMap((step) => {
    const day = dayAt(card, step.path);
    return day === null ? [] : [{ step, day }];
  });
  return known.flatMap(({ step, day }, at) => {
    const earlier = known[at - 1];
    return earlier && day < earlier.day
      ? [before(card, step, day, earlier.step.within, earlier.day)]
      : [];
  });
}

/** Warnings where a sample arrives before it was ordered, or is approved before it came. */
export function checkSampleDays(card: Card): Diagnostic[] {
  return inOrder(card, SAMPLE);
}

/** A warning where a room's measures were checked before it was measured. */
export function checkMeasuredDays(card: Card): Diagnostic[] {
  return inOrder(card, MEASURED);
}

/** Warnings where a pole, or whatever else an item's file names as bought ready, came before it was ordered. */
export function checkBoughtDays(card: Card): Diagnostic[] {
  const steps = (path: Path): readonly Step[] => [
    { path: [...path, "ordered"], head: "This was ordered", within: "it was ordered" },
    { path: [...path, "arrived"], head: "This came", within: "it was ordered" },
  ];
  const entries = (path: Path): readonly unknown[] => {
    const node = nodeAt(card.root, path);
    return node?.kind === "list" ? node.entries : [];
  };
  return entries(["items"]).flatMap((_, at) => [
    ...inOrder(card, steps(["items", at])),
    ...entries(["items", at, "hardware"]).flatMap((_, n) =>
      inOrder(card, steps(["items", at, "hardware", n])),
    ),
  ]);
}

/** Every entry of a list of a project's file with its cloth and its day, where both are written. */
function dated(card: Card, list: string): { at: number; cloth: string; day: string }[] {
  const node = nodeAt(card.root, [list]);
  return (node?.kind === "list" ? node.entries : []).flatMap((_, at) => {
    const cloth = nodeAt(card.root, [list, at, "cloth"]);
    const day = dayAt(card, [list, at, "on"]);
    return cloth?.kind === "text" && day !== null ? [{ at, cloth: cloth.text.trim(), day }] : [];
  });
}

/** Warnings where a cloth came before it was first ordered, or all is fitted before the last of it was ordered or came. */
export function checkProjectDays(card: Card): Diagnostic[] {
  const orders = dated(card, "orders");
  const receipts = dated(card, "receipts");
  const early = receipts.flatMap(({ at, cloth, day }): Diagnostic[] => {
    const days = orders.filter((order) => order.cloth === cloth).map((order) => order.day);
    const first = days.toSorted()[0];
    const step = { path: ["receipts", at, "on"], head: "This came" };
    return first !== undefined && day < first
      ? [before(card, step, day, `${cloth} was first ordered`, first)]
      : [];
  });
  const fitting = dayAt(card, ["fitting"]);
  const last = [
    ...orders.map((order) => ({ ...order, words: `${order.cloth} was ordered` })),
    ...receipts.map((receipt) => ({ ...receipt, words: `${receipt.cloth} came` })),
  ]
    .toSorted((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0))
    .at(-1);
  const fitted = { path: ["fitting"], head: "The fitting is" };
  const tooEarly =
    fitting !== null && last && fitting < last.day
      ? [before(card, fitted, fitting, last.words, last.day)]
      : [];
  return [...early, ...(tooEarly.length > 0 ? tooEarly : pastWhenDated(card))];
}

/** Warnings where what is still to come, the fitting or the end of the prices, lies before the day that the documents bear. */
function pastWhenDated(card: Card): Diagnostic[] {
  const status = nodeAt(card.root, ["status"]);
  const reached = status?.kind === "text" ? status.text.trim().toLowerCase() : "";
  // What was fitted is dated anew for its last account, and what was approved is held to its prices.
  if (["fitted", "archived"].includes(reached)) return [];
  const dated: Step = {
    path: ["dated"],
    head: "The documents are dated",
    within: "these documents are dated",
  };
  const fitting: Step = { path: ["fitting"], head: "The fitting is", within: "" };
  const hold: Step = { path: ["prices-hold"], head: "These prices end", within: "" };
  const isOpen = ["enquiry", "proposed"].includes(reached);
  return [fitting, ...(isOpen ? [hold] : [])].flatMap((step) => inOrder(card, [dated, step]));
}
