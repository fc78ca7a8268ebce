import { isOfCard } from "../../sourcing/needs.ts";
import { capital } from "../../units/capital.ts";
import type { Page } from "../page.ts";
import { orderLetterPath, ordersPath } from "../paths.ts";
import type { ProjectData } from "../projectData.ts";
import { inVocabulary } from "../words/inVocabulary.ts";
import { marked } from "../words/marks.ts";
import type { Language } from "../words/phrases.ts";
import { letterWays } from "./letters/bySupplier.ts";
import { ordersBySupplier } from "./letters/orderLines.ts";
import { isAmongPieces, orderPieces } from "./orderPieces.ts";
import { orderRows, placeOf, waitOf } from "./orderRows.ts";
import { studioPage } from "./studioPage.ts";

/** Rows in the order in which their cloths first stand, those of one cloth after each other. */
function byCloth<R extends { readonly name: string }>(rows: readonly R[]): R[] {
  const names = [...new Set(rows.map((r) => r.name))];
  return names.flatMap((name) => rows.filter((r) => r.name === name));
}

/** The order list of a project, by supplier: for the studio alone, with trade prices and the suppliers' own numbers. */
export function ordersPage(data: ProjectData): Page {
  const { project, studio } = data;
  const language = studio.fields.language;
  const all = orderRows(data);
  const suppliers = [...new Set(all.map((r) => r.supplier))].sort();
  const others = data.quantities.materials.filter(
    (m) => m.by === "studio" && !isOfCard(m) && !isAmongPieces(data, m),
  );
  return studioPage(data, "orders", {
    to: ["findings", "schedule", "receiving", "samples", "account"],
    model: {
      letters: letterWays(ordersPath(project.id), ordersBySupplier(data), (key) =>
        orderLetterPath(project.id, key),
      ),
      groups: suppliers.map((key) => {
        const card = studio.fields.suppliers?.[key];
        return {
          name: card?.name ?? (key || "No supplier named"),
          account: card?.account ?? "",
          email: card?.email ?? "",
          phone: card?.phone ?? "",
          rows: byCloth(all.filter((r) => r.supplier === key)),
        };
      }),
      materials: others.map((m) => ({
        what: marked(capital(inVocabulary(m.what, language as Language))),
        // Of what is counted the number alone: its name stands beside it.
        text: marked(m.unit === "piece" ? `${m.amount.valueOf()}` : m.text),
        item: placeOf(data, m.room, m.item),
        wait: waitOf(data, m),
      })),
      pieces: orderPieces(data).map((p) => ({
        ...p,
        wait: waitOf(data, p),
        item: placeOf(data, p.room, p.item),
      })),
      deliver: project.fields.delivery ?? studio.fields.address ?? "",
    },
  });
}
