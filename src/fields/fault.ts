import type { z } from "zod";

/** What a field says of a text that it cannot take; `records/` adds file, line and column. */
export interface Fault {
  readonly code: string;
  readonly message: string;
  readonly expected?: string;
  readonly hint?: string;
}

type Context = { issues: { push(issue: unknown): unknown } };

/** Reports a fault from inside a zod transform and returns the value that stops the parse. */
export function refuse(context: Context, input: unknown, fault: Fault): never {
  context.issues.push({ code: "custom", input, message: fault.message, params: { ...fault } });
  return undefined as never;
}

/** The fault that a zod issue carries, when it came from one of our fields. */
export function faultOf(issue: z.core.$ZodIssue): Fault | null {
  const params = (issue as { params?: unknown }).params;
  if (params && typeof params === "object" && "code" in params && "message" in params)
    return params as Fault;
  return null;
}
