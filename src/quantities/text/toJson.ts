import type Fraction from "fraction.js";
import type { Length } from "../../units/length.ts";
import type {
  ClothPlan,
  ClothQuantity,
  MakerPart,
  ProjectQuantities,
  SharedBuy,
  UsedDefault,
} from "../quantityTypes.ts";
import { sharedBuyOf } from "../together/sharedBuyOf.ts";
import { clothWaitsFor, isUnchosen } from "../unchosen.ts";
import { itemWorking } from "./itemWorking.ts";
import { togetherWords } from "./togetherWords.ts";

/** A plain value for `JSON.stringify`: lengths in millimetres under keys that end in Mm. */
export type Json =
  | null
  | boolean
  | number
  | string
  | readonly Json[]
  | { readonly [key: string]: Json };

/** The `quantities` document, the same shape for a project and for one of its rooms. */
export function quantitiesJson(quantities: ProjectQuantities): Json {
  return {
    project: quantities.project,
    room: quantities.room,
    cloths: quantities.cloths.map((each) => clothJson(each, quantities)),
    together: quantities.together.map(sharedJson),
    materials: quantities.materials.map((each) => ({
      room: each.room,
      item: each.item,
      what: each.what,
      cloth: each.cloth,
      by: each.by,
      buy: {
        amount: number(each.amount),
        unit: each.unit,
        text: each.text,
        waits: isUnchosen(quantities, each.room, each.item) ? [`${each.room}/${each.item}`] : [],
      },
    })),
    trims: quantities.trims.map((each) => ({
      cloth: each.cloth,
      needMm: mm(each.need),
      buy: {
        amount: number(each.buy.amount),
        unit: each.buy.unit,
        text: each.buy.text,
        lengthMm: mm(each.buy.length),
        waits: clothWaitsFor(quantities, each.cloth).map((u) => `${u.room}/${u.item}`),
      },
      uses: each.uses.map(({ room, item, length }) => ({ room, item, lengthMm: mm(length) })),
      working: { ...each.working },
    })),
    items: quantities.items.map((each) => ({
      room: each.room,
      item: each.item,
      kind: each.kind,
      title: each.title,
      maker: each.maker,
      figures: { ...each.made.figures },
      estimate: each.made.estimate,
      questions: [...each.made.questions],
      working: itemWorking(each.made).map((line) => ({ ...line })),
      defaultsUsed: each.defaultsUsed.map(defaultJson),
    })),
  };
}

function clothJson(each: ClothQuantity, quantities: ProjectQuantities): Json {
  return {
    cloth: each.cloth,
    maker: each.maker,
    lot: each.lot,
    lots: each.lots.map(({ lot, lengths, rooms }) => ({
      lot,
      lengths: [...lengths],
      rooms: rooms.map(({ room, items }) => ({ room, items: [...items] })),
    })),
    clientsOwn: each.clientsOwn,
    usableWidthMm: mm(each.usableWidth),
    repeatUnknown: each.facts.repeatUnknown ?? false,
    // Of a cloth that is washed before it is cut: what it is expected to lose, as shares of one. Its plan is of the washed cloth.
    washing: each.facts.washing
      ? { along: number(each.facts.washing.along), across: number(each.facts.washing.across) }
      : null,
    plan: planJson(each.plan),
    estimates: each.estimates.map((e) => ({
      room: e.room,
      item: e.item,
      lengthMm: mm(e.length),
      text: e.text,
    })),
    spareMm: mm(each.spare),
    buy: {
      amount: number(each.buy.amount),
      unit: each.buy.unit,
      text: each.buy.text,
      lengthMm: mm(each.buy.length),
      // Of what is bought once for several makers this is one maker's part: `together` says what to order.
      together: sharedBuyOf(quantities, each) !== null,
      waits: clothWaitsFor(quantities, each.cloth).map((u) => `${u.room}/${u.item}`),
    },
    handbookMm: each.handbook === null ? null : mm(each.handbook),
    handbook: each.handbookWords,
    working: each.working.map((line) => ({ ...line })),
    defaultsUsed: each.defaultsUsed.map(defaultJson),
  };
}

/** What is bought once for several makers, and how it is divided. */
export function sharedJson(each: SharedBuy): Json {
  const { buy, bolts } = each;
  const parts = (all: readonly MakerPart[]) =>
    all.map(({ maker, length }) => ({ maker, lengthMm: mm(length) }));
  return {
    cloth: each.cloth,
    buy: {
      amount: number(buy.amount),
      unit: buy.unit,
      text: buy.text,
      lengthMm: mm(buy.length),
    },
    parts: parts(each.parts),
    bolts: bolts && {
      lengthMm: mm(bolts.length),
      count: bolts.count,
      cut: bolts.cut.map(parts),
    },
    separatelyMm: mm(each.separately),
    text: togetherWords(each, (maker) => maker),
  };
}

/** A cutting plan as plain values. */
export function planJson(plan: ClothPlan): Json {
  return {
    lengthMm: mm(plan.length),
    lowerBoundMm: mm(plan.lowerBound),
    startMm: mm(plan.start),
    startsMm: plan.starts.map(mm),
    forCutting: plan.forCutting,
    notForCutting: [...plan.notForCutting],
    released: plan.released && { ...plan.released },
    number: plan.number,
    pattern: plan.pattern && {
      horizontalMm: plan.pattern.horizontal && mm(plan.pattern.horizontal),
      verticalMm: mm(plan.pattern.vertical),
      match: plan.pattern.match,
      fromSelvedgeMm: mm(plan.pattern.motifX),
    },
    lengths: plan.lengths.map(mm),
    pieces: plan.pieces.map((piece) => ({
      room: piece.room,
      item: piece.item,
      piece: piece.piece,
      surface: piece.surface,
      xMm: mm(piece.x),
      yMm: mm(piece.y),
      widthMm: mm(piece.width),
      heightMm: mm(piece.height),
      turned: piece.turned,
      mayTurn: piece.mayTurn,
      register: piece.register && {
        xMm: piece.register.x && mm(piece.register.x),
        yMm: piece.register.y && mm(piece.register.y),
      },
      length: piece.length,
    })),
    crossCuts: plan.crossCuts.map((cut) => ({ length: cut.length, yMm: mm(cut.y) })),
    itemByItemMm: plan.itemByItem && mm(plan.itemByItem),
    savedByPatternPointMm: plan.saved && mm(plan.saved),
    chose: [...plan.chose],
    levels: plan.levels.map((level) => ({
      room: level.room,
      items: [...level.items],
      motifAboveFootMm: level.motifAboveFoot && mm(level.motifAboveFoot),
    })),
  };
}

function defaultJson(used: UsedDefault): Json {
  return { ...used };
}

function mm(length: Length): number {
  return length.toMm();
}

function number(value: Fraction): number {
  return value.valueOf();
}
