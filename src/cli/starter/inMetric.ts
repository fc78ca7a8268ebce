import { parseLength } from "../../units/parseLength.ts";
import type { FieldSchema } from "./fieldLines.ts";

/** A length in feet, inches or yards, as examples have it: `7' 2"`, `84 1/2"`, `4'`, `1 3/4 yd`. */
const IMPERIAL = /\d+(?:' \d+)?(?:(?: |(?<=\d)\/)\d+(?:\/\d+)?)?(?:["']| yd\b)/g;
const METRIC = /\d ?(?:m|cm|mm|m2|g\/m2|m2\/l)\b/;
/** From so many centimetres on an example is whole centimetres. */
const WHOLE_CM = 20;

/** A length as a metric studio would write it, rounded to what an example needs; what is no length as it is. */
function metricLength(typed: string): string {
  const read = parseLength(typed);
  if (!read.ok) return typed;
  const cm = read.length.toMm() / 10;
  if (typed.endsWith("yd")) return `${Math.round(cm / 10) / 10} m`;
  return `${cm >= WHOLE_CM ? Math.round(cm) : Math.round(cm * 2) / 2} cm`;
}

/** The same fields with examples for a studio that reckons in centimetres: those that the schema has, else its own turned into them. */
export function inMetric(schema: FieldSchema): FieldSchema {
  const each = (all: Readonly<Record<string, FieldSchema>>) =>
    Object.fromEntries(Object.entries(all).map(([key, field]) => [key, inMetric(field)]));
  const { properties, items, additionalProperties, anyOf, examples, words } = schema;
  const own = examples?.find((one) => typeof one === "string" && METRIC.test(one));
  const turned = examples?.map((one) =>
    typeof one === "string" ? one.replace(IMPERIAL, metricLength) : one,
  );
  return {
    ...schema,
    ...(properties ? { properties: each(properties) } : {}),
    ...(items ? { items: inMetric(items) } : {}),
    ...(typeof additionalProperties === "object"
      ? { additionalProperties: inMetric(additionalProperties) }
      : {}),
    ...(anyOf ? { anyOf: anyOf.map(inMetric) } : {}),
    ...(turned ? { examples: own === undefined ? turned : [own, ...turned] } : {}),
    // Cloth is sold by the metre there.
    ...(words?.includes("metre") && words.includes("yard")
      ? { words: ["metre", ...words.filter((word) => word !== "metre")] }
      : {}),
  };
}
