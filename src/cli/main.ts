import { resolve } from "node:path";
import { Command, CommanderError, InvalidArgumentError } from "commander";
import { reportText } from "../diagnostics/report.ts";
import { type ExitCode, type Outcome, UsageError } from "./outcome.ts";
import { recoverOutput } from "./output/outputFolder.ts";
import { paintFor } from "./paint.ts";
import { progress } from "./progress.ts";
import type { Surroundings } from "./surroundings.ts";
import { parseTarget } from "./target.ts";
import { build } from "./verbs/build.ts";
import { check } from "./verbs/check.ts";
import { money } from "./verbs/money.ts";
import { type Beginning, begin } from "./verbs/new.ts";
import { preview } from "./verbs/preview.ts";
import { quantities } from "./verbs/quantities.ts";
import type { Wiring } from "./wiring.ts";

interface GlobalOptions {
  readonly content: string;
  readonly out: string;
  readonly json?: boolean;
}

/**
 * Runs one command line (without node and script) and gives its exit status. With `--json` standard
 * output holds one JSON document and nothing else; everything meant for people goes to standard error.
 */
export async function main(
  args: readonly string[],
  wiring: Wiring,
  around: Surroundings,
): Promise<ExitCode> {
  let exit: ExitCode = 0;
  const program = commandLine(wiring, around, (code) => {
    exit = code;
  });
  try {
    await program.parseAsync([...args], { from: "user" });
    return exit;
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : 2;
    if (error instanceof UsageError) {
      around.err.write(`roomcloth: ${error.message}\n`);
      return 2;
    }
    throw error;
  }
}

function commandLine(
  wiring: Wiring,
  around: Surroundings,
  setExit: (code: ExitCode) => void,
): Command {
  const program = new Command("roomcloth")
    .description("One Markdown file a room becomes boards, a priced proposal and makers' sheets.")
    .option("--content <dir>", "folder with the studio's files", "content")
    .option("--out <dir>", "folder for the documents", "out")
    .option("--json", "one JSON document on standard output");
  quiet(program, around);
  const bar = progress(around.err);

  /** Runs a verb after an interrupted build was finished, and shows what it has to say. */
  const run = async (
    command: Command,
    verb: (contentDir: string, globals: GlobalOptions) => Promise<Outcome>,
  ): Promise<void> => {
    const globals = command.optsWithGlobals<GlobalOptions>();
    recoverOutput(resolve(globals.out));
    const outcome = await verb(resolve(globals.content), globals).finally(() => bar.clear());
    const { diagnostics } = outcome;
    if (diagnostics.length > 0) {
      around.err.write(`${reportText(diagnostics, paintFor(around.err, around.env))}\n`);
    }
    if (globals.json) around.out.write(`${JSON.stringify(outcome.json, null, 2)}\n`);
    else if (outcome.text !== "") around.out.write(`${outcome.text}\n`);
    setExit(outcome.exit);
  };
  const verb = (parent: Command, name: string, description: string): Command =>
    quiet(parent.command(name).description(description).allowExcessArguments(false), around);

  verb(program, "build", "make the documents: everything, or one project or room")
    .option("--only <project[/room]>", "only this project or room")
    .option("--no-pdf", "pages only")
    .option("--no-cache", "measure and print everything again")
    .action((options: { only?: string; pdf: boolean; cache: boolean }, command: Command) =>
      run(command, (contentDir, globals) => {
        const { env } = around;
        const only = options.only === undefined ? null : parseTarget(options.only);
        const { pdf, cache: useCache } = options;
        return build(
          { contentDir, outDir: resolve(globals.out), only, pdf, useCache, env },
          wiring,
          bar,
        );
      }),
    );
  verb(program, "check", "what is wrong and what is worth a look; writes nothing").action(
    (_options: object, command: Command) => run(command, (contentDir) => check(contentDir, wiring)),
  );
  for (const [name, report, description] of [
    ["quantities", quantities, "what to buy, with the working and the cutting plan"],
    ["money", money, "what it costs, line by line"],
  ] as const) {
    verb(program, name, description)
      .argument("<project[/room]>", "a project, or one of its rooms")
      .action((target: string, _options: object, command: Command) =>
        run(command, (contentDir) => report(contentDir, parseTarget(target), wiring)),
      );
  }
  verb(program, "preview", "the pages in a browser, renewed with every change")
    .option("--port <number>", "port of the address", port, 8080)
    .action(async (options: { port: number }, command: Command) => {
      const globals = command.optsWithGlobals<GlobalOptions>();
      if (globals.json) throw new UsageError("preview has no --json.");
      recoverOutput(resolve(globals.out));
      setExit(await preview(resolve(globals.content), options.port, wiring, around));
    });

  const starting = quiet(
    program.command("new").description("commented starting files with every field"),
    around,
  );
  const start = (command: Command, beginning: Beginning): Promise<void> =>
    run(command, (contentDir) => begin(contentDir, beginning, wiring));
  verb(starting, "studio", "a new studio")
    .argument("<dir>", "its folder")
    .action((dir: string, _options: object, command: Command) =>
      start(command, { kind: "studio", folder: resolve(dir) }),
    );
  verb(starting, "project", "a new project")
    .argument("<title>", "its name")
    .action((title: string, _options: object, command: Command) =>
      start(command, { kind: "project", title }),
    );
  verb(starting, "room", "a new room")
    .argument("<project>", "the project's folder name")
    .argument("<title>", "the room's name")
    .action((project: string, title: string, _options: object, command: Command) =>
      start(command, { kind: "room", project, title }),
    );
  verb(starting, "cloth", "a new cloth, measured from its photograph")
    .argument("<photo>", "the photograph")
    .option("--shows <length>", "how much cloth it shows from left to right")
    .action((photo: string, options: { shows?: string }, command: Command) =>
      start(command, { kind: "cloth", photo: resolve(photo), shows: options.shows ?? null }),
    );
  return program;
}

/** Errors are thrown instead of ending the process, and help goes where we are told. */
function quiet(command: Command, around: Surroundings): Command {
  return command.exitOverride().configureOutput({
    writeOut: (text) => around.out.write(text),
    writeErr: (text) => around.err.write(text),
  });
}

function port(text: string): number {
  const number = Number(text);
  if (!/^\d+$/.test(text) || number > 65_535) {
    throw new InvalidArgumentError("A port is a whole number up to 65535; 0 chooses a free one.");
  }
  return number;
}
