import type Fraction from "fraction.js";
import type { z } from "zod";
import type { Length } from "../../units/length.ts";
import type { studioSchema } from "./studioSchema.ts";

/** Allowances as given by a studio or maker: kind, then name, to a length, ratio or count. */
export type AllowanceValues = {
  readonly [kind: string]: { readonly [name: string]: Length | Fraction | number } | undefined;
};

export type StudioFields = z.output<ReturnType<typeof studioSchema<z.ZodType<AllowanceValues>>>>;
