import type { Trap } from "./trap.ts";

/** Commas and points in numbers. */
export const NUMBERS: readonly Trap[] = [
  {
    name: "a thousands comma in { }",
    yaml: "price: { trade: 1,200.50, per: yard }",
    says: [
      '2:18 comma-in-number: Between { } a comma parts two entries, so “1,200.50” is cut in two. -> Put the number in quotes. The line should read:\nprice: { trade: "1,200.50", per: yard }',
    ],
  },
  {
    name: "a sum with points between its thousands",
    yaml: "fees: { design: 1.200,50 }",
    says: [
      "2:22 comma-in-number: Between { } a comma parts two entries, so “1.200,50” is cut in two. -> Write a point before the cents and nothing between the thousands. The line should read:\nfees: { design: 1200.50 }",
    ],
  },
  {
    name: "a decimal comma in { }",
    yaml: "price: { minimum: 2,14 m, per: metre }",
    says: [
      '2:20 comma-in-number: Between { } a comma parts two entries, so “2,14 m” is cut in two. -> Put the number in quotes. The line should read:\nprice: { minimum: "2,14 m", per: metre }',
    ],
  },
  {
    name: "two commas in a number",
    yaml: "fees: { design: 1,234,567 }",
    says: [
      '2:18 comma-in-number: Between { } a comma parts two entries, so “1,234,567” is cut in two. -> Put the number in quotes. The line should read:\nfees: { design: "1,234,567" }',
    ],
  },
  {
    name: "a comma in a number in [ ]",
    yaml: "tins: [2,5 l, 5 l]",
    says: [
      '2:9 comma-in-number: Between [ ] a comma parts two entries, so “2,5 l” is cut in two. -> Put the number in quotes. The line should read:\ntins: ["2,5 l", 5 l]',
    ],
  },
];
