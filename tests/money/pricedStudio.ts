import type { ProjectMoney } from "../../src/money/projectMoney.ts";
import { type SmallStudio, STUDIO_INCHES } from "../quantities/studioOf.ts";
import { pricedOf } from "./priced.ts";

const MAKER = `makers:\n  bench: { name: Bench, makes: [curtains, cushion], rates: { cushion: 30 per item } }`;
/** A studio with round figures: cloth doubled, making half as much again, ten per cent on goods. */
export const STUDIO = `${STUDIO_INCHES}\nmarkup: { cloth: 2, making: 1.5 }\ntax: { goods: 10, services: 0 }\n${MAKER}`;
export const PLAIN = `cloth: Plain\nwidth: 54"\nkind: plain\nprice: { trade: 10, per: yard }`;
export const CUSHION = `  - cushion: One\n    cloth: plain\n    size: 20" x 20"\n    edge: knife\n    filling: feather\n    maker: bench\n`;
export const ROOM = `room: Den\nbudget: 200\nitems:\n${CUSHION}`;

/** One cushion in one room, with whatever a test changes. */
export const small = (more: Partial<SmallStudio> = {}): SmallStudio => ({
  studio: STUDIO,
  cloths: { plain: PLAIN },
  rooms: { den: ROOM },
  ...more,
});

/** A small studio's one project, read and priced by the program. */
export const priced = (files: SmallStudio): ProjectMoney => pricedOf(files).money;

export const lineOf = (money: ProjectMoney, what: string) =>
  money.lines.find((l) => l.what === what);
