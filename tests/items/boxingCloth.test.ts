import { expect, test } from "vitest";
import { seatPadDrawing } from "../../src/items/cushion/seatpad/drawing.ts";
import { seatPadKind } from "../../src/items/cushion/seatpad/kind.ts";
import { drawingContext } from "./drawnItems.ts";
import { clothFacts, contextFor, fieldsOf, length } from "./tradeContext.ts";

const named = (id: string, name: string) => clothFacts({ id, name, usableWidth: length('54"') });

/** What a pad's sheet says of its boxing's cloth; null where it has no such heading. */
function boxingOf(raw: Record<string, unknown>): readonly string[] | null {
  const fields = fieldsOf(seatPadKind.schema, {
    "seat-pad": "Bench",
    cloth: "print",
    size: '48" x 18"',
    thickness: '3"',
    ...raw,
  }) as never;
  const cloths = [named("print", "Print"), named("oat", "Oat"), named("rust", "Rust")];
  const context = contextFor(seatPadKind.allowances, { cloths });
  const made = seatPadKind.make(fields, context);
  const { groups } = seatPadDrawing.sheet(fields, made as never, drawingContext(context));
  return groups.find((g) => g.heading === "Boxing")?.lines ?? null;
}

test("a boxing of another cloth than the top has its cloth on the sheet", () => {
  expect(boxingOf({ boxing: "rust" })?.[0]).toContain("Rust");
  expect(boxingOf({ boxing: "oat", back: "oat" })).toEqual(["As the bottom."]);
  expect(boxingOf({ back: "oat" })).toBeNull();
  expect(boxingOf({ boxing: "print" })).toBeNull();
});
