import { seatAllowances } from "../allowances.ts";

/** What is added to a sofa's pieces, and what is taken for a welt that nobody measured. */
export const sofaAllowances = seatAllowances({ inches: "24 yd", centimetres: "22 m" }, "sofa");
