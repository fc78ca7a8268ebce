import { expect, test } from "vitest";
import { PROJECT, recordsOf, STUDIO_INCHES } from "../quantities/studioOf.ts";
import { clientOf, pricedOf } from "./priced.ts";

// Sums by hand; the scenario is made up.

const STUDIO = `${STUDIO_INCHES}\nmarkup: { cloth: 2, making: 1.5 }`;
const PLAIN = `cloth: Plain\nwidth: 54"\nkind: plain\nprice: { trade: 10, per: yard }`;
const ROOM = `room: Den\nitems:\n  - cushion: One\n    cloth: plain\n    size: 20" x 20"\n    edge: knife\n    making: 30\n`;
const fee = (words: string, studio = STUDIO) =>
  clientOf(
    pricedOf({
      studio,
      project: `${PROJECT}\nfees: { design: ${words} }`,
      cloths: { plain: PLAIN },
      rooms: { den: ROOM },
    }).money,
    "fee",
  );

test("a fee is a sum, hours at a rate, or a share of what is sold", () => {
  expect(fee("900")).toEqual([90_000]);
  expect(fee('"1,200.50"')).toEqual([120_050]);
  expect(fee("{ hours: 12.5, rate: 85 }")).toEqual([106_250]);
  // Cloth 3/4 yd at 10 x 2 = 15.00; making 30 x 1.5 = 45.00.
  expect(fee("{ share: 10 % }")).toEqual([600]);
  expect(fee("{ share: 10 %, of: cloth }")).toEqual([150]);
  expect(fee("{ share: 10 %, of: goods }")).toEqual([150]);
  expect(fee("{ share: 10 %, of: making }")).toEqual([450]);
});

test("hours of fitting alone are paid at the fitter's own rate and charged with the markup on fitting", () => {
  const studio = (rate: string) =>
    `${STUDIO_INCHES}\nmarkup: { fitting: 1.15 }\nmakers: { lowe: { name: Lowe, makes: [fitting], rates: { fitting: ${rate} } } }`;
  const fitted = (rate: string, words = "{ hours: 9.5 }") =>
    pricedOf({
      studio: studio(rate),
      project: `${PROJECT}\nfees: { fitting: ${words} }`,
      cloths: { plain: PLAIN },
      rooms: { den: ROOM },
    }).money;
  const line = (money: ReturnType<typeof fitted>) => money.lines.find((l) => l.what === "fee");
  // 9.5 x 48 = 456.00; x 1.15 = 524.40.
  expect(line(fitted("48 per hour"))).toMatchObject({
    trade: { minor: 45_600n },
    client: { minor: 52_440n },
  });
  expect(line(fitted("48 per hour", "{ hours: 9.5, rate: 60 }"))).toMatchObject({
    trade: { minor: 57_000n },
    client: { minor: 57_000n },
  });
  const none = fitted("48 per item");
  expect(none.diagnostics.map((d) => [d.code, d.severity, d.line])).toContainEqual([
    "fee-without-rate",
    "error",
    5,
  ]);
});

test("a share is rounded to the nearest cent, halves up, and never taken of another fee", () => {
  // 1.1 % of 15.00 is 0.165.
  expect(fee("{ share: 1.1 %, of: cloth }")).toEqual([17]);
  const two = pricedOf({
    studio: STUDIO,
    project: `${PROJECT}\nfees: { design: 1000, management: { share: 10 % } }`,
    cloths: { plain: PLAIN },
    rooms: { den: ROOM },
  }).money;
  expect(clientOf(two, "fee")).toEqual([100_000, 600]);
});

test("a share of what has no price yet is open itself", () => {
  const { money } = pricedOf({
    studio: STUDIO,
    project: `${PROJECT}\nfees: { design: { share: 10 % } }`,
    cloths: { plain: PLAIN.replace(/\nprice.*/, "") },
    rooms: { den: ROOM },
  });
  expect(money.lines.find((l) => l.what === "fee")).toMatchObject({
    open: true,
    client: { minor: 450n },
  });
});

test("faults of fees, tax and sums are found at their lines", () => {
  const found = (lines: { project?: string; studio?: string; room?: string }) =>
    recordsOf({
      studio: `${STUDIO_INCHES}\n${lines.studio ?? ""}`,
      project: `${PROJECT}\n${lines.project ?? ""}`,
      cloths: { plain: PLAIN },
      rooms: { den: `${ROOM}${lines.room ?? ""}` },
    })
      .diagnostics.filter((d) => d.severity === "error")
      .map((d) => [d.file.split("/").at(-1), d.line, d.code]);
  expect(found({ project: "fees: { design: -900 }" })).toEqual([
    ["project.md", 5, "amount-negative"],
  ]);
  expect(found({ project: "budget: -1" })).toEqual([["project.md", 5, "amount-negative"]]);
  expect(found({ project: "fees: { design: { hours: 12 } }" })).toEqual([
    ["project.md", 5, "key-missing"],
  ]);
  expect(found({ project: "fees: { design: { share: 120 % } }" })).toEqual([
    ["project.md", 5, "percent-unreadable"],
  ]);
  expect(found({ studio: "tax: { goods: 101, services: 0 }" })).toEqual([
    ["studio.md", 7, "percent-unreadable"],
  ]);
  expect(found({ project: "budget: £ 900" })).toEqual([["project.md", 5, "currency-other"]]);
  expect(found({ room: `    hardware:\n      - { what: pole, trade: 80 EUR }\n` })).toEqual([
    ["den.md", 10, "currency-other"],
  ]);
});

test("instalments that do not make the whole, at their line", () => {
  const { money } = pricedOf({
    studio: STUDIO,
    project: `${PROJECT}\ninstalments:\n  - { deposit: 50%, due: approval }\n  - { balance: 40%, due: fitting }`,
    cloths: { plain: PLAIN },
    rooms: { den: ROOM },
  });
  expect(money.instalments).toEqual([]);
  expect(money.diagnostics.map((d) => [d.code, d.severity, d.line])).toEqual([
    ["instalments-do-not-sum", "error", 7],
  ]);
});
