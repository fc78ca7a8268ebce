/** Where progress is written: standard error, or a stand-in for tests. */
export interface ProgressStream {
  readonly isTTY?: boolean;
  readonly columns?: number;
  write(text: string): unknown;
}

/** One line that says what is being done, rewritten in place. */
export interface Progress {
  show(line: string): void;
  /** Wipes the line, so that other text may follow. */
  clear(): void;
}

/** Progress on a terminal; where the output goes to a file or another program, nothing at all. */
export function progress(stream: ProgressStream): Progress {
  if (stream.isTTY !== true) return { show() {}, clear() {} };
  let shown = false;
  return {
    show(line) {
      // A line as long as the terminal is wide would wrap, and the next could not overwrite it.
      const room = Math.max(10, (stream.columns ?? 80) - 1);
      const plain = [...line.replace(/\p{Cc}/gu, " ")];
      const text = plain.length > room ? `${plain.slice(0, room - 1).join("")}…` : plain.join("");
      stream.write(`\r\u001B[2K${text}`);
      shown = true;
    },
    clear() {
      if (shown) stream.write("\r\u001B[2K");
      shown = false;
    },
  };
}
