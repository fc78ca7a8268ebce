import { clothPrice, unitsBought } from "../../money/clothPrice.ts";
import { printMoney, timesMoney } from "../../units/money.ts";
import { issueWords } from "../board/board.ts";
import type { Page } from "../page.ts";
import { findingsPath, ordersPath, STUDIO_INDEX } from "../paths.ts";
import type { ProjectData } from "../projectData.ts";
import { wayTo } from "../ways.ts";
import { dateInWords } from "../words/dates.ts";
import { marked } from "../words/marks.ts";
import { runningWords } from "../words/pageStyle.ts";

/** The order list of a project, by supplier: for the studio alone, with trade prices and the suppliers' own numbers. */
export function ordersPage(data: ProjectData): Page {
  const { project, studio, records } = data;
  const language = studio.fields.language;
  const currency = studio.fields.currency;
  const path = ordersPath(project.id);
  const open = new Set(
    data.choices.filter((choice) => choice.open).map((c) => `${c.room}/${c.item}`),
  );
  const waits = (uses: readonly { readonly room: string; readonly item: string }[]): string => {
    const waiting = uses.filter((u) => open.has(`${u.room}/${u.item}`)).length;
    if (waiting === 0) return "";
    return waiting === uses.length
      ? "Not to be ordered: the client has not chosen yet."
      : "Wait: a part of it is for an item that the client has not chosen yet.";
  };
  const rows = data.quantities.cloths.map((c) => {
    const card = records.cloths.get(c.cloth);
    const price = card ? clothPrice(card, studio, currency, []) : null;
    const units = price
      ? unitsBought({ length: c.buy.length }, price.per, card?.fields.roll?.length ?? null)
      : null;
    const sum = price && units ? timesMoney(price.trade, units) : null;
    const sample = card?.fields.sample;
    return {
      supplier: card?.fields.supplier ?? "",
      wait: waits(c.uses),
      name: c.facts.name,
      reference: card?.fields.reference ?? "",
      buy: marked(c.buy.text),
      maker: c.maker ? (studio.fields.makers?.[c.maker]?.name ?? c.maker) : "",
      price: price ? `${printMoney(price.trade, language)} a ${price.per}` : "price to come",
      sum: sum ? printMoney(sum, language) : "",
      dated: card?.fields.price?.on ? dateInWords(card.fields.price.on, language) : "",
      sample: sample?.approved
        ? "approved"
        : sample?.arrived
          ? "arrived"
          : sample?.ordered
            ? "ordered"
            : "not ordered",
      lot: c.lot ?? "to be one lot",
      handbook: marked(c.handbookWords ?? ""),
    };
  });
  const rolls = data.quantities.materials
    .filter((m) => m.cloth !== null && (m.unit === "roll" || m.unit === "piece"))
    .map((m) => {
      const card = records.cloths.get(m.cloth as string);
      const price = card ? clothPrice(card, studio, currency, []) : null;
      const units = price
        ? unitsBought({ count: m.amount }, price.per, card?.fields.roll?.length ?? null)
        : null;
      return {
        supplier: card?.fields.supplier ?? "",
        wait: waits([m]),
        name: card?.fields.cloth ?? (m.cloth as string),
        reference: card?.fields.reference ?? "",
        buy: marked(m.text),
        maker: "",
        price: price ? `${printMoney(price.trade, language)} a ${price.per}` : "price to come",
        sum: price && units ? printMoney(timesMoney(price.trade, units), language) : "",
        dated: card?.fields.price?.on ? dateInWords(card.fields.price.on, language) : "",
        sample: card?.fields.sample?.approved ? "approved" : "not approved",
        lot: "to be one batch",
        handbook: marked(""),
      };
    });
  const all = [...rows, ...rolls];
  const suppliers = [...new Set(all.map((r) => r.supplier))].sort();
  const others = data.quantities.materials.filter(
    (m) => m.by === "studio" && !(m.cloth !== null && (m.unit === "roll" || m.unit === "piece")),
  );
  const model = {
    kind: "orders",
    style: runningWords(
      project.fields.project,
      `Order list, ${issueWords(data)}`,
      "For the studio alone",
    ),
    letter: studio.fields.paper === "a3" ? "a4-page" : "letter-page",
    project: project.fields.project,
    issue: issueWords(data),
    groups: suppliers.map((key) => {
      const card = studio.fields.suppliers?.[key];
      return {
        name: card?.name ?? (key || "No supplier named"),
        account: card?.account ?? "",
        email: card?.email ?? "",
        phone: card?.phone ?? "",
        rows: all.filter((r) => r.supplier === key),
      };
    }),
    materials: others.map((m) => ({
      what: m.what,
      text: marked(m.text),
      item:
        data.rooms.find((r) => r.record.id === m.room)?.items.find((i) => i.record.id === m.item)
          ?.record.title ?? m.item,
    })),
    deliver: project.fields.delivery ?? studio.fields.address ?? "",
    ways: [
      { href: wayTo(path, STUDIO_INDEX), text: "All projects" },
      { href: wayTo(path, findingsPath(project.id)), text: "Findings" },
    ],
  };
  return {
    reader: "studio",
    project: project.id,
    room: null,
    path,
    title: `${project.fields.project}: order list`,
    language,
    paper: studio.fields.paper === "a3" ? "a4" : "letter",
    pdf: true,
    model,
    pictures: [],
  };
}
