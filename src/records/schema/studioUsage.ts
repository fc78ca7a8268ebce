import { z } from "zod";
import { closedField } from "../../fields/closedField.ts";
import { durationField } from "../../fields/durationField.ts";
import { positiveLengthField } from "../../fields/lengthField.ts";
import { paintPriceField } from "../../fields/paintPriceField.ts";
import { countField, listField, textField } from "../../fields/plainFields.ts";
import { workField } from "../../fields/workField.ts";

/** The paint that the studio uses: coverage, sizes and price. */
export function paintField() {
  return z
    .strictObject({
      coverage: textField()
        .optional()
        .meta({
          description: "how far a tin goes, for one coat",
          examples: ["375 sq ft/gal", "10 m2/l"],
        }),
      tins: listField(textField())
        .optional()
        .meta({ description: "sizes that it is sold in", examples: ["[1 gal, 1 qt]"] }),
      price: paintPriceField()
        .optional()
        .meta({
          description:
            "what the studio pays, by the gallon, quart, litre or tin, or by a tin of one size (`52 per 2.5 l`); a list where sizes are priced apart",
          examples: ["58 per gallon", "[58 per gallon, 22 per quart]"],
        }),
    })
    .optional()
    .meta({ description: "the paint that the studio uses" });
}

/** From which repeat and motif on a print counts as large where a photograph is measured. */
export function largePrintField() {
  return z
    .strictObject({
      repeat: positiveLengthField()
        .optional()
        .meta({
          description:
            "side of a square as large as its repeat, from which a print is large; else 11 cm",
          examples: [`4 1/4"`, "11 cm"],
        }),
      motif: positiveLengthField()
        .optional()
        .meta({
          description: "size of its motif, from which a print is large; else 9 cm",
          examples: [`3 1/2"`, "9 cm"],
        }),
    })
    .optional()
    .meta({ description: "what counts as a large print where a photograph is measured" });
}

/** The phase in which each kind of item is bought, where it is not the usual one. */
export function phasesField(kinds: readonly string[]) {
  return z
    .record(workField(kinds).meta({ examples: ["curtains"] }), countField(1, 9))
    .optional()
    .meta({
      description:
        "the phase in which each kind of item is bought, where it is not the usual one: 1 is cheap and easily changed",
    });
}

/** Time that the studio keeps between the steps of a project. Nothing is kept where it is not said. */
export function scheduleField() {
  return z
    .strictObject({
      ready: durationField()
        .optional()
        .meta({
          description: "what is made is ready so long before the fitting",
          examples: ["2 working days"],
        }),
      checking: durationField()
        .optional()
        .meta({
          description:
            "cloth is with its maker so long before the making begins, to be measured, checked and released",
          examples: ["3 working days"],
        }),
      ordering: durationField()
        .optional()
        .meta({
          description:
            "the client's approval is there so long before the first order, for deposit and paperwork",
          examples: ["1 week"],
        }),
    })
    .optional()
    .meta({
      description: "time that the studio keeps between the steps of a schedule",
      examples: ["{ ready: 2 working days, checking: 3 working days, ordering: 1 week }"],
    });
}

/** Days on which nobody works, whoever it is; those of one maker or supplier stand there. */
export function closedDaysField() {
  return z
    .array(closedField())
    .optional()
    .meta({
      description:
        "days on which nobody works: holidays, and the weeks in which all are closed. In a schedule no day falls on one, and working days pass over all of them. A time in weeks or days is taken to hold single holidays already; a closing of five working days or more on end it does not, and grows by it",
      examples: ["[2026-12-25 Christmas, 2027-01-01]"],
    });
}
