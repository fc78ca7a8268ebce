import { expect, test } from "vitest";
import { pricesIn } from "../../src/money/pricesIn.ts";
import { money } from "../../src/units/money.ts";
import { computedFolder } from "./smallFolder.ts";

// What is told of a project's money before any price is in, when some are, and when all are. A made-up scenario, sums by hand.

const files = (making: string, price: string): Record<string, string> => ({
  "studio.md":
    "studio: Alder Lane Rooms\nlanguage: en-GB\nunits: centimetres\ncurrency: EUR\npaper: a3\ncontingency: 10\ntax: { goods: 20, services: 20, name: VAT }\nmakers: { bench: { name: Bench, makes: [cushion] } }",
  "cloths/linen.md": `cloth: Linen\nwidth: 140 cm\nkind: plain\ncolours: [{ colour: "#8a7a66" }]\n${price}`,
  "projects/quay/project.md":
    "project: Quay\nclient: { name: Nobody }\nstatus: proposed\nbudget: 4000\ninstalments: [{ deposit: 50%, due: approval }, { balance: rest, due: fitting }]",
  "projects/quay/den.md": `room: Den\nbudget: 900\nitems:
  - cushion: Seat
    size: 45 cm x 45 cm
    edge: knife
    maker: bench
    ${making}
    options: [{ option: Plain, cloth: linen }, { option: Larger, cloth: linen, size: 60 cm x 60 cm }]`,
});

/** All that the pages and the texts say of a project, as one text. */
async function told(making: string, price: string) {
  const computed = await computedFolder(files(making, price));
  expect(computed.diagnostics.filter((d) => d.severity === "error")).toEqual([]);
  const pages = new Map(
    computed.pages.map((page) => [
      page.path,
      JSON.stringify(page.model, (_, value) => (typeof value === "bigint" ? `${value}` : value)),
    ]),
  );
  const record = computed.archiving("quay")?.record("test").text ?? "";
  return { pages, texts: computed.money("quay")?.text ?? "", record };
}

const ZERO = /€0(?![.,\d])|(?<![\d.,])0\.00|"(?:sum|total)":"0/;

test("before any price is in, no page and no text tells a sum of nothing", async () => {
  const { pages, texts, record } = await told("", "");
  for (const [path, model] of pages) {
    // What was paid is nothing, and said so; the kinds' own sum stands on no page without its rows.
    const words = model.replaceAll('"paid":"0.00"', "").replace(/"kindsTotal":\{[^}]*\}/, "");
    const at = ZERO.exec(words)?.index;
    expect(at === undefined ? "" : words.slice(at - 60, at + 40), path).toBe("");
  }
  expect(texts).toContain("No price is in yet.\nBudget €4,000.00.");
  expect(texts).toContain("nothing is approved yet; no price is in yet.");
  expect(texts.replace("Paid €0.00.", "")).not.toMatch(ZERO);
  expect(pages.get("studio/index.html")).toContain("No price is in yet.");
  expect(record).toMatch(/Price +its price was still to come/);
  expect(pages.get("studio/quay/findings.html")).toContain(
    "No price is in yet, the limit is €4,000.00",
  );
  expect(pages.get("studio/quay/account.html")).toContain(
    "No price is in yet, so there is nothing to be paid.",
  );
});

test("once some prices are in the sum is said not to be the whole, and once all are it stands alone", async () => {
  const some = await told("making: 40", "");
  // Forty, with its tax 48, and a tenth of forty-eight, which is not taxed.
  expect(some.texts).toContain("total €52.80 so far, prices still to come.");
  expect(some.pages.get("studio/index.html")).toContain("trade so far.");
  const all = await told("making: 40", "price: { trade: 10, client: 20, per: m }");
  expect(all.texts).not.toMatch(/so far|to come/);
  expect(all.pages.get("studio/index.html")).not.toMatch(/so far|No price/);
});

test("a price of nothing is a price; nothing at all is none", () => {
  const nothing = money(0, "EUR");
  expect(pricesIn([], [nothing])).toBe("none");
  expect(pricesIn([{ open: false }], [nothing])).toBe("all");
  expect(pricesIn([{ open: false }, { open: true }], [nothing])).toBe("none");
  expect(pricesIn([{ open: true }], [money(1, "EUR")])).toBe("some");
});

test("a payment before any price is in is told, and nothing is in credit", async () => {
  const unpriced = files("", "");
  const computed = await computedFolder({
    ...unpriced,
    "projects/quay/project.md": `${unpriced["projects/quay/project.md"]}\npayments: [{ amount: 120, on: 2026-10-05, what: survey }]`,
  });
  const page = computed.pages.find((p) => p.path === "studio/quay/account.html");
  expect(page?.model.lead).toBe("€120.00 is paid, and no price is in yet.");
  expect(computed.money("quay")?.text).toContain("Paid €120.00.");
  expect(computed.money("quay")?.text).not.toContain("in credit");
});

/** The parts and the reserve as the proposal and the account print them, with what their stars mean. */
async function shares(instalments: string, making = "making: 40", price = "") {
  const all = files(making, price);
  const project = (all["projects/quay/project.md"] as string).replace(
    /instalments: .*/,
    instalments,
  );
  const computed = await computedFolder({ ...all, "projects/quay/project.md": project });
  expect(computed.diagnostics.filter((d) => d.severity === "error")).toEqual([]);
  const model = (path: string) =>
    computed.pages.find((p) => p.path === path)?.model as Readonly<Record<string, unknown>>;
  const budget = model("client/quay/proposal.html").budget as {
    instalments: { sum: string }[];
    closing: { sum: string }[];
    open: string;
    partsOpen: string;
  };
  const account = model("studio/quay/account.html") as unknown as {
    due: { rows: { sum: string; open: string }[]; total: { sum: string }; note: string };
    paid: { total: string; rest: { sum: string } };
    reserve: { kept: string; rest: { sum: string } };
    made: {
      whole: { rows: { sum: string }[] };
      kinds: { what: string; net: string; sum: string }[];
      kindsTotal: { sum: string };
    };
  };
  return { budget, account, text: computed.money("quay")?.text ?? "" };
}
const sumsOf = (rows: readonly { readonly sum: string }[]) => rows.map((r) => r.sum);
const NOTE =
  "* Price to come: Linen. The total leaves it out. The reserve is a share of the prices that are in, and will grow with the others.";

test("parts and reserve that are shares of a total not yet whole carry its star and its note", async () => {
  // Of 52.80, of which 4.80 are the reserve: half of it, and the rest.
  const half = "instalments: [{ deposit: 50%, due: approval }, { balance: rest, due: fitting }]";
  const { budget, account, text } = await shares(half);
  expect(sumsOf(budget.instalments)).toEqual(["26.40 *", "26.40 *"]);
  expect(sumsOf(budget.closing)).toEqual(["4.80 *"]);
  expect([budget.open, budget.partsOpen]).toEqual([NOTE, NOTE]);
  expect(sumsOf(account.due.rows)).toEqual(["26.40 *", "26.40 *"]);
  expect(account.due.total.sum).toBe("52.80 *");
  expect(account.due.note).toBe(NOTE);
  expect([account.paid.total, account.paid.rest.sum]).toEqual(["52.80 *", "52.80 *"]);
  expect([account.reserve.kept, account.reserve.rest.sum]).toEqual(["4.80 *", "4.80 *"]);
  expect(sumsOf(account.made.whole.rows)).toEqual(["4.80 *"]);
  // Of a kind without any price no sum is told, not even one of nothing.
  expect(account.made.kinds.map(({ net, sum }) => [net, sum])).toEqual([
    ["", "to come *"],
    ["40.00", "48.00"],
    ["4.80", "4.80 *"],
  ]);
  expect(account.made.kindsTotal.sum).toBe("52.80 *");
  expect(text).toContain("deposit, due at approval: €26.40 so far.");
});

test("a part that is a sum stands as it is, and so does what was approved but for the balance", async () => {
  const sum = "instalments: [{ deposit: €20, due: approval }, { balance: rest, due: fitting }]";
  const typed = await shares(sum);
  expect(sumsOf(typed.budget.instalments)).toEqual(["20.00", "32.80 *"]);
  expect(sumsOf(typed.account.due.rows)).toEqual(["20.00", "32.80 *"]);
  const approved = await shares(
    "revision: A\napprovals: [{ revision: A, by: Nobody, on: 2026-11-02, total: 50 }]\ninstalments: [{ deposit: 50%, due: approval }, { balance: rest, due: fitting }]",
  );
  expect(sumsOf(approved.account.due.rows)).toEqual(["25.00", "27.80 *"]);
});

test("once every price is in nothing carries a star", async () => {
  const half = "instalments: [{ deposit: 50%, due: approval }, { balance: rest, due: fitting }]";
  const whole = await shares(half, "making: 40", "price: { trade: 10, client: 20, per: m }");
  expect(JSON.stringify([whole.budget.instalments, whole.account])).not.toContain("*");
  expect(whole.account.due.note).toBe("");
});
