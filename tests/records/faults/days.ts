import { changed, ROOM } from "../studio.ts";
import type { Fault } from "./fault.ts";

/** A day that is none, or that comes before what it follows. */
export const DAYS: readonly Fault[] = [
  {
    name: "a sample that arrives before it was ordered and is approved before it came",
    files: changed(
      "cloths/slub-linen.md",
      "kind: plain",
      "kind: plain\nsample: { ordered: 2026-03-04, arrived: 2025-03-09, approved: 2025-03-01 }",
    ),
    says: [
      "cloths/slub-linen.md:5:32 warning days-out-of-order: This sample arrived on 2025-03-09, before it was ordered, on 2026-03-04. -> Look which of the two days is wrong; often it is the year.",
      "cloths/slub-linen.md:5:53 warning days-out-of-order: This sample was approved on 2025-03-01, before it arrived, on 2025-03-09. -> Look which of the two days is wrong; often it is the year.",
    ],
  },
  {
    name: "measures that were checked before they were taken",
    files: changed(
      ROOM,
      "anchor: tiled-stove",
      "anchor: tiled-stove\nmeasured: { by: studio, on: 2026-10-02, checked: 2026-01-20 }",
    ),
    says: [
      "projects/quay/dining-room.md:11:41 warning days-out-of-order: These measures were checked on 2026-01-20, before the room was measured, on 2026-10-02. -> Look which of the two days is wrong; often it is the year.",
    ],
  },
  {
    name: "a pole that came before it was ordered",
    files: changed(
      ROOM,
      'drop: 92"',
      'drop: 92"\n    hardware: [{ what: pole, ordered: 2026-12-01, arrived: 2026-01-20 }]',
    ),
    says: [
      "projects/quay/dining-room.md:19:51 warning days-out-of-order: This came on 2026-01-20, before it was ordered, on 2026-12-01. -> Look which of the two days is wrong; often it is the year.",
    ],
  },
  {
    name: "a fitting, and an end of the prices, before the proposal is dated",
    files: changed(
      "projects/quay/project.md",
      "status: proposed",
      "status: proposed\ndated: 2026-11-20\nfitting: 2026-03-08\nprices-hold: 2026-01-15",
    ),
    says: [
      "projects/quay/project.md:6:1 warning days-out-of-order: The fitting is on 2026-03-08, before these documents are dated, on 2026-11-20. -> Look which of the two days is wrong; often it is the year.",
      "projects/quay/project.md:7:1 warning days-out-of-order: These prices end on 2026-01-15, before these documents are dated, on 2026-11-20. -> Look which of the two days is wrong; often it is the year.",
    ],
  },
  {
    name: "cloth that came before it was ordered, and a fitting before both",
    files: changed(
      "projects/quay/project.md",
      "status: proposed",
      "status: ordered\nfitting: 2026-03-08\norders: [{ cloth: slub-linen, length: 3 yd, on: 2027-01-04 }, { cloth: slub-linen, length: 1 yd, on: 2027-01-11 }]\nreceipts: [{ cloth: slub-linen, lot: 1, length: 3 yd, on: 2026-01-20 }]",
    ),
    says: [
      "projects/quay/project.md:5:1 warning days-out-of-order: The fitting is on 2026-03-08, before slub-linen was ordered, on 2027-01-11. -> Look which of the two days is wrong; often it is the year.",
      "projects/quay/project.md:7:55 warning days-out-of-order: This came on 2026-01-20, before slub-linen was first ordered, on 2027-01-04. -> Look which of the two days is wrong; often it is the year.",
    ],
  },
  {
    name: "a date that can mean two days",
    files: changed(
      "projects/quay/project.md",
      `status: proposed`,
      `status: proposed\nfitting: 3/4/26`,
    ),
    says: [
      "projects/quay/project.md:5:10 error date-unreadable: “3/4/26” can mean two different days. -> Write the year first: 2026-04-03, or 2026-03-04.",
    ],
  },
  {
    name: "a date that can mean one day alone",
    files: changed(
      "projects/quay/project.md",
      `status: proposed`,
      `status: proposed\nfitting: 30/04/2027`,
    ),
    says: [
      "projects/quay/project.md:5:10 error date-unreadable: “30/04/2027” is not a date as it is written here. -> Write the year first: 2027-04-30.",
    ],
  },
  {
    name: "a date in words",
    files: changed(
      "projects/quay/project.md",
      `status: proposed`,
      `status: proposed\nfitting: 26th November 2026`,
    ),
    says: [
      "projects/quay/project.md:5:10 error date-unreadable: “26th November 2026” is not a date as it is written here. -> Write the year first: 2026-11-26.",
    ],
  },
  {
    name: "a day that is not in the calendar",
    files: changed(
      "projects/quay/project.md",
      `status: proposed`,
      `status: proposed\nfitting: 2026-02-30`,
    ),
    says: [
      "projects/quay/project.md:5:10 error date-unreadable: “2026-02-30” is not a date: February 2026 has 28 days. -> Write the year, the month and the day: 2026-03-04 is the fourth of March 2026.",
    ],
  },
];
