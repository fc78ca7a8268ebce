import { Length } from "../../units/length.ts";
import { NARROW, type UnitSystem } from "../../units/printLength.ts";

/**
 * A length of cloth in decimals, `15.38 m` or `4.6 yd`, hundredths: UP for what is needed, DOWN for what can be proved or is there.
 */
export function clothText(length: Length, units: UnitSystem, way: "up" | "down" = "up"): string {
  const unit = units === "inches" ? Length.yards(1) : Length.mm(1000);
  const hundredths = length.over(unit).mul(100);
  const whole = Number((way === "up" ? hundredths.ceil() : hundredths.floor()).valueOf());
  const text = (whole / 100).toFixed(2).replace(/\.?0+$/, "");
  return `${text}${NARROW}${units === "inches" ? "yd" : "m"}`;
}
