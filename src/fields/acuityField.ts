import { z } from "zod";
import { refuse } from "./fault.ts";

/** From a third of a good eye's to what the youngest eyes reach; ISO 8596's scale goes further both ways. */
const LEAST = 0.3;
const MOST = 2;

/** Decimal visual acuity (ISO 8596), 1 for a good eye: as a number, or as the fraction that an eye test gives (20/25, 6/7.5). */
export function acuityField() {
  return z
    .string()
    .transform((text, context): number => {
      const [near, far = 1, ...rest] = text.trim().replaceAll(",", ".").split("/").map(Number);
      const acuity = (near ?? Number.NaN) / far;
      if (rest.length === 0 && acuity >= LEAST && acuity <= MOST) return acuity;
      return refuse(context, text, {
        code: "acuity-unreadable",
        message: `“${text.trim()}” is no acuity of an eye that chooses cloth: a good eye has 1.`,
        expected: `a number from ${LEAST} to ${MOST}, such as 0.8`,
        hint: "Write what an eye test gives, as a number or as its fraction: 0.8, 20/25 and 6/7.5 are the same.",
      });
    })
    .meta({ examples: ["0.8"] });
}
