import type { FinishedCost } from "../../money/alternatives.ts";
import { boltText } from "../../money/boltText.ts";
import type { PlaceShares } from "../../scheme/zones.ts";
import { capital } from "../../units/capital.ts";
import { type Money, printMoney } from "../../units/money.ts";
import { NARROW, type UnitSystem } from "../../units/printLength.ts";
import { wordsIn } from "../../units/spelling.ts";
import type { ProjectData, RoomData } from "../projectData.ts";
import { type Markup, marked } from "../words/marks.ts";
import { makerName } from "./dividedCloth.ts";

const percent = (share: number | null): string =>
  share === null ? "" : `${Math.round(share * 100)} %`;
const M_PER_FT = 0.3048;

/** A distance in the room, to half a foot or a decimetre: no eye is more exact. */
function distance(m: number | null, units: UnitSystem): string {
  if (m === null) return "";
  if (units === "centimetres") return `${m.toFixed(1)}${NARROW}m`;
  const halves = Math.round((2 * m) / M_PER_FT);
  return `${Math.floor(halves / 2)}${halves % 2 === 1 ? "½" : ""}${NARROW}ft`;
}

function placeRow(what: string, p: PlaceShares) {
  return {
    place: `${capital(p.place)}${what}`,
    plain: percent(p.plainShare),
    colours: p.shares
      .slice(0, 5)
      .map((s) => `${s.name} ${s.hundredths}`)
      .join(", "),
  };
}

/** What is seen of a room by height and by wall, and its patterns from the door, the seat and the hand: numbers for the studio alone. */
export function seenTables(room: RoomData, language: string, units: UnitSystem) {
  const say = wordsIn(language);
  return {
    places: [
      ...room.scheme.byZone.map((p) => placeRow(" height", p)),
      ...room.scheme.byWall.map((p) => placeRow(" wall", p)),
    ],
    known:
      room.scheme.knownShare > 0.995
        ? ""
        : say`Of ${percent(room.scheme.knownShare)} of what is seen the colour is known; the rest, a floor without its colour or an unpainted wall, is left out.`,
    read: room.scheme.views.some((v) => v.plainFromDoor || v.plainFromSeat || v.plainInHand),
    views: room.scheme.views.map((v) => ({
      name: v.name,
      door: distance(v.doorM, units),
      seat: distance(v.seatM, units),
      from: v.readsPlainFromM === null ? say`not in a room` : distance(v.readsPlainFromM, units),
      reads: [
        v.plainFromDoor ? say`plain from the door` : "",
        v.plainFromSeat ? say`plain from the seat` : "",
        v.plainInHand ? say`plain in the hand` : "",
      ]
        .filter((w) => w !== "")
        .join(", "),
      colour: v.colourName ?? "",
    })),
  };
}

/** An item by its room and its own title, an option below it: `Study, Court window: To the floor, lined`. */
function calledIn(data: ProjectData, roomId: string, itemId: string | null, title: string): string {
  const room = data.rooms.find((r) => r.record.id === roomId);
  const item = room?.items.find((i) => i.record.id === itemId);
  const names = [capital(room?.record.fields.room ?? roomId), item?.record.title ?? itemId ?? ""];
  return `${names.filter((n) => n !== "").join(", ")}: ${title}`;
}

type Print = (sum: Money) => string;

/** What something costs finished; while a price is still to come so far, and without any no figure at all. */
function costWords({ trade, client, open }: FinishedCost, print: Print) {
  const words = (sum: Money): string =>
    !open ? print(sum) : sum.minor === 0n ? "to come" : `${print(sum)} so far`;
  return { trade: words(trade), client: words(client) };
}

/** What it changes; nothing is known of it where it has no price. */
function moreWords(
  stands: boolean,
  { cost, more }: { readonly cost: FinishedCost; readonly more: Money },
  print: Print,
): string {
  if (stands) return "as it stands";
  return cost.open && cost.client.minor === 0n ? "not known yet" : print(more);
}

/** What the options and comparisons of a project come to, at trade and client prices, and what each changes in its room. */
export function comparedRows(data: ProjectData) {
  const { language } = data.studio.fields;
  const print = (sum: Parameters<typeof printMoney>[0]): string =>
    printMoney(sum, language).replace("-", "\u2212");
  const options = data.choices.flatMap((choice) =>
    choice.options.map((option) => ({
      what: calledIn(data, choice.room, choice.item, option.title),
      ...costWords(option.priced.cost, print),
      more: moreWords(option.stands, option.priced, print),
      notes: [
        ...option.buys.map((b) => `${data.records.cloths.get(b.cloth)?.fields.cloth}: ${b.text}.`),
        ...option.changes.client,
        ...option.changes.studio,
      ].map(marked),
    })),
  );
  const cloths = data.compared.map((a) => ({
    what: calledIn(data, a.room, null, a.title),
    ...costWords(a.cost, print),
    more: moreWords(false, a, print),
    notes: [],
  }));
  return [...options, ...cloths];
}

/** Cut length against whole bolts, a sentence for each cloth that has a bolt's price. */
export function boltWords(data: ProjectData): Markup[] {
  const { language, units } = data.studio.fields;
  const print = (sum: Parameters<typeof printMoney>[0]): string => printMoney(sum, language);
  return data.money.bolts.map((b) => {
    const worth = `Whole bolts cost less: write by-the-bolt: [${b.cloth}] in project.md.`;
    return marked(
      boltText(b, units, print, {
        worth,
        dear: "Cut costs less.",
        maker: (maker) => makerName(data, maker),
      }),
    );
  });
}
