import { yamlText } from "../../records/reading/exampleValue.ts";
import type { ProjectRecord } from "../../records/records.ts";
import { type Money, typedMoney } from "../../units/money.ts";
import type { Agreed, Approval } from "./agreed.ts";

/** Stands for a sum that only she knows; the reader of files refuses it, so that it cannot be left by mistake. */
const DOTS = "…";

const sumOr = (sum: Money | null): string => (sum ? typedMoney(sum) : DOTS);

function approvalLine(one: Omit<Approval, "at">): string {
  const [revision, by] = [one.revision, one.by].map((text) => yamlText(text, true));
  return `  - { revision: ${revision}, by: ${by}, on: ${one.on}, total: ${sumOr(one.total)} }`;
}

/** What is asked of an account. */
interface Standing extends Pick<Agreed, "last"> {
  readonly asOf: string;
  readonly total: Money;
  readonly priceToCome: readonly string[];
}

/**
 * What an approval of today's total is written as: by whoever approved last, else the client, and on the day of the account. While a
 * price is still to come the total is not what will be approved, and dots stand for it.
 */
export function nextApproval(
  project: ProjectRecord,
  { last, asOf, total, priceToCome }: Standing,
): string {
  return approvalLine({
    revision: project.fields.revision ?? last?.revision ?? "A",
    by: last?.by ?? project.fields.client.name,
    on: asOf,
    total: priceToCome.length > 0 ? null : total,
  });
}

/** An approval as it is written, with the total that it lacks: today's where nothing says that it changed, else dots. */
export function approvalWithTotal(approval: Approval, total: Money | null): string {
  return approvalLine({ ...approval, total });
}

/** A payment's line for `payments:`; dots stand for a sum that is not known. */
export function paymentLine(amount: Money | null, on: string, what: string): string {
  return `  - { amount: ${sumOr(amount)}, on: ${on}, what: ${yamlText(what, true)} }`;
}
