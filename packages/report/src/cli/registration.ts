import type { Command } from "commander";
import type { Outcome } from "./outcome.ts";
import type { Standing } from "./standing.ts";

/** Does a command's work where the user stands, and gives what it came to. */
export type Work = (standing: Standing) => Outcome | Promise<Outcome>;

/** Called by the action of a command. */
export type Run = (work: Work) => Promise<void>;

/** Declares one or more commands; the action of each calls `run` with its work. */
export type Registration = (program: Command, run: Run) => void;
