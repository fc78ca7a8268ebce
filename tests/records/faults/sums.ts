import { changed } from "../studio.ts";
import type { Fault } from "./fault.ts";

/** Sums, shares and currencies that are none. */
export const SUMS: readonly Fault[] = [
  {
    name: "a fee that is a share, written as a sum",
    files: changed(
      "projects/quay/project.md",
      `status: proposed`,
      `status: proposed\nfees: { design: 10 % }`,
    ),
    says: [
      "projects/quay/project.md:5:17 error amount-unreadable: “10 %” is a share, and a sum of money is wanted here. -> Write the sum. A fee may also be { share: 10 % }.",
    ],
  },
  {
    name: "a share above the whole",
    files: changed("projects/quay/project.md", `deposit: 50%`, `deposit: 150%`),
    says: [
      "projects/quay/project.md:5:26 error instalment-too-much: “150%” is more than the whole. -> Write for example 50 %, or rest for what is left.",
    ],
  },
  {
    name: "an instalment of nothing",
    files: changed("projects/quay/project.md", `deposit: 50%, `, ``),
    says: [
      "projects/quay/project.md:5:15 error instalment-unclear: This instalment does not say what is to be paid. -> Write one of deposit, interim and balance, for example { deposit: 50%, due: approval }.",
    ],
  },
  {
    name: "a sum of less than nothing",
    files: changed("cloths/fern-trellis.md", `trade: 38.00`, `trade: -38.00`),
    says: [
      "cloths/fern-trellis.md:8:17 error amount-negative: “-38.00” is less than nothing. -> Take the minus sign away.",
    ],
  },
  {
    name: "a sum in another currency",
    files: changed("cloths/fern-trellis.md", `trade: 38.00`, `trade: € 38.00`),
    says: [
      "cloths/fern-trellis.md:8:17 error currency-other: “€ 38.00” is marked €, but the studio reckons in USD. -> Write the sum in USD, without a mark, or change the currency in studio.md.",
    ],
  },
  {
    name: "a sum with a point before its thousands, as much of the world writes it",
    files: changed("cloths/fern-trellis.md", `trade: 38.00`, `trade: 1.200`),
    says: [
      "cloths/fern-trellis.md:8:17 error sum-thousands: “1.200” can be read in two ways: as 1200, or as 1.20. -> Write 1200 or 1.20.",
    ],
  },
  {
    name: "a sum finer than the smallest coin",
    files: changed("cloths/fern-trellis.md", `trade: 38.00`, `trade: 38.005`),
    says: [
      "cloths/fern-trellis.md:8:17 error sum-too-fine: “38.005” is finer than the smallest coin of USD. -> Write it with 2 figures after the point.",
    ],
  },
  {
    name: "a currency that is none",
    files: changed("studio.md", `currency: USD`, `currency: dollars`),
    says: [
      "studio.md:5:11 error currency-unknown: “dollars” is not a currency's code. -> Write for example USD, CAD, GBP or EUR.",
    ],
  },
];
