import { seatAllowances } from "../allowances.ts";

/** What is added to a dining chair's pieces, and what is taken for a welt that nobody measured. */
export const diningChairAllowances = seatAllowances(
  { inches: "3 yd", centimetres: "2.8 m" },
  "dining chair",
);
