import type { TaxedLine } from "../../money/lines.ts";
import { payable } from "../../money/payable.ts";
import { pricesIn } from "../../money/pricesIn.ts";
import { isKept, isReserve } from "../../money/reserve.ts";
import { capital } from "../../units/capital.ts";
import {
  compareMoney,
  type Money,
  minorDigits,
  money,
  printMoney,
  subtractMoney,
} from "../../units/money.ts";
import { spelled } from "../../units/spelling.ts";
import type { PictureBook } from "../pictures/pictureBook.ts";
import type { ProjectData } from "../projectData.ts";
import { currencySign, trueMinus } from "../words/bareMoney.ts";
import type { Markup } from "../words/marks.ts";
import { starred, TO_COME } from "../words/stars.ts";
import { roomsPhrase, stairHead, stepName, stepSentence } from "./budgetWords.ts";
import { type BudgetRow, itemRows, soFar } from "./itemRows.ts";
import { openNote } from "./openNote.ts";
import { type StairPart, stairSvg, stairWords } from "./stair.ts";
import { stairOf } from "./stairOf.ts";
import { mergeParts, stairPart } from "./stairParts.ts";
import { whenDue } from "./whenDue.ts";

export interface BudgetGroup {
  readonly phase: number;
  readonly name: string;
  /** What the step comes to in each room. */
  readonly rooms: readonly { readonly room: string; readonly sum: string }[];
  readonly sentence: string;
  readonly sum: string;
  readonly rows: readonly BudgetRow[];
}

export interface Budget {
  /** True while nothing is to be made, bought or paid for: there is no sum to agree to. */
  readonly isEmpty: boolean;
  readonly sum: string;
  readonly sentence: string;
  readonly head: string;
  /** Null while no price is in. */
  readonly picture: Markup | null;
  /** The picture's words, for a telephone. */
  readonly pictureWords: readonly { readonly name: string; readonly sum: string }[];
  readonly currency: string;
  readonly groups: readonly BudgetGroup[];
  readonly closing: readonly { readonly what: string; readonly sum: string }[];
  readonly total: string;
  /** What the stars mean; empty where every price is in. */
  readonly open: string;
  readonly instalments: readonly {
    readonly name: string;
    readonly due: string;
    readonly sum: string;
  }[];
  /** The same below the parts; empty where none has a star. */
  readonly partsOpen: string;
  readonly rooms: readonly {
    readonly name: string;
    readonly sum: string;
    readonly budget: string;
    readonly words: string;
  }[];
  /** What the rooms' sums leave out. */
  readonly inNoRoom: string;
  readonly footnote: string;
}

/** The budget as a client reads it: the answer first, one picture, then what makes it up. Only client prices stand in it. */
export function budgetOf(data: ProjectData, book: PictureBook, prefix: string): Budget {
  const { money: m, studio } = data;
  const language = studio.fields.language;
  const clientLines = m.lines.filter(
    (l) => l.what !== "sample" || compareMoney(l.client, money(0, m.currency)) !== 0,
  );
  const unit = 10n ** BigInt(minorDigits(m.currency));
  const cents = clientLines.some((l) => l.client.minor % unit !== 0n || l.tax.minor % unit !== 0n);
  const symbol = currencySign(m.currency, language);
  const print = (sum: Money): string => alike(sum).replace(symbol, "").trim();
  const whole = (sum: Money): string => printMoney(sum, language, true);
  // Sums that stand side by side have cents, all or none.
  const alike = (sum: Money): string => trueMinus(printMoney(sum, language, !cents));
  const phases = [
    ...new Set(clientLines.filter((l) => l.item !== null).map((l) => l.phase ?? 1)),
  ].sort((a, b) => a - b);
  // A share of prices that are still to come is no sum yet.
  const kept = payable(clientLines.filter(isReserve), m.taxIncluded, m.currency);
  const reserve = kept.minor === 0n ? null : kept;
  const isFinal = m.reserve.isFinal;
  const isOpen = clientLines.some((l) => l.open);
  const isReserveShare = isOpen && clientLines.some(isKept);
  const groups = phases.map(
    (phase, at): BudgetGroup & { parts: StairPart[]; lines: readonly TaxedLine[] } => {
      const lines = clientLines.filter((l) => l.item !== null && (l.phase ?? 1) === phase);
      return {
        phase,
        name: stepName(at, phases.length),
        rooms: data.rooms.map((r) => {
          const own = lines.filter((l) => l.room === r.record.id);
          return {
            room: r.record.id,
            sum: soFar(own, whole(payable(own, m.taxIncluded, m.currency))),
          };
        }),
        sentence: spelled(
          stepSentence(
            m.phases.find((p) => p.phase === phase)?.commitment ?? 1,
            phases.length === 1,
          ),
          language,
        ),
        sum: soFar(lines, print(payable(lines, m.taxIncluded, m.currency))),
        lines,
        rows: itemRows(data, lines, print).map((r) => r.row),
        parts: mergeParts(
          lines.map((l) => stairPart(data, l, book)),
          m.currency,
        ),
      };
    },
  );
  const fees = clientLines.filter((l) => l.item === null && !isReserve(l));
  const stair = stairOf(data, groups, {
    fees,
    reserve: reserve
      ? {
          sum: reserve,
          words: `${isFinal ? "used of the reserve" : "kept in reserve"}, ${starred(alike(reserve), isReserveShare)}`,
        }
      : null,
    book,
    print: { alike, whole },
  });
  const remaining = m.totals.remaining;
  const taxWords =
    m.taxIncluded || m.totals.tax.minor > 0n ? ", tax and making included" : ", making included";
  const open = openNote(clientLines);
  const unpriced = open !== "" && pricesIn(clientLines, [m.totals.total]) === "none";
  const over =
    remaining && remaining.minor < 0n ? whole(subtractMoney(money(0, m.currency), remaining)) : "";
  const leaves =
    open !== ""
      ? unpriced
        ? " No price is in yet."
        : ` Not every price is in yet, so this is not the whole of it${over ? `, and it is already ${over} more than the sum you set` : ""}.`
      : remaining === null
        ? ""
        : remaining.minor > 0n
          ? ` That leaves ${whole(remaining)} of the sum you set.`
          : remaining.minor === 0n
            ? " That is the sum you set."
            : ` That is ${over} more than the sum you set.`;
  const rooms = roomsPhrase(data.rooms.map((r) => r.record.fields.room));
  const isEmpty = groups.length === 0 && fees.length === 0;
  return {
    isEmpty,
    sum: isEmpty ? "Nothing yet" : unpriced ? "Price to come" : whole(m.totals.total),
    sentence: isEmpty
      ? `is listed to be made or bought for ${rooms}.`
      : `for ${rooms}${taxWords}.${leaves}`,
    head: stairHead(groups.length),
    picture: unpriced ? null : stairSvg(stair, prefix),
    pictureWords: stairWords(stair),
    currency: symbol,
    groups: groups.map(({ parts: _, lines: __, ...g }) => g),
    closing: [
      ...fees.map((l) => ({
        what: l.label,
        sum: soFar([l], print(payable([l], m.taxIncluded, m.currency))),
      })),
      ...(reserve
        ? [
            {
              what: isFinal ? "Used of the reserve" : "Kept in reserve for the unforeseen",
              sum: starred(print(reserve), isReserveShare),
            },
          ]
        : []),
    ],
    total: unpriced ? TO_COME : soFar(clientLines, print(m.totals.total)),
    open,
    instalments: m.instalments.map((i) => ({
      name: capital(i.name),
      due: whenDue(i.due, language),
      sum: unpriced ? TO_COME : starred(print(i.amount), isOpen && i.isShare),
    })),
    partsOpen: unpriced || m.instalments.some((i) => i.isShare) ? open : "",
    rooms: m.rooms.map(({ room, totals }) => {
      const own = clientLines.filter((l) => l.room === room);
      const left = totals.remaining;
      const words =
        left === null
          ? ""
          : left.minor >= 0n
            ? print(left)
            : `over by ${print(subtractMoney(money(0, m.currency), left))}`;
      return {
        name: data.rooms.find((d) => d.record.id === room)?.record.fields.room ?? room,
        sum: soFar(own, print(totals.total)),
        budget: totals.budget ? print(totals.budget) : "none set",
        words: words === "" ? "" : soFar(own, words),
      };
    }),
    inNoRoom: `Fees, fitting${fees.some((l) => l.what === "discount") ? ", what comes off" : ""} and the reserve belong to the whole project and stand in no room.`,
    footnote: data.project.fields["prices-hold"]
      ? `Cloth lengths include matching the pattern. Each line holds its cloth, making and tax.`
      : "Each line holds its cloth, making and tax.",
  };
}
