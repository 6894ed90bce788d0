import type { Command } from "commander";
import type { CommandContext } from "./command-context.ts";
import type { CommandResult } from "./command-result.ts";

/** Does a command's work in the user's context and gives the outcome. */
export type Work = (context: CommandContext) => CommandResult | Promise<CommandResult>;

/** Called by the action of a command. */
export type Run = (work: Work) => Promise<void>;

/** Declares one or more commands; the action of each calls `run` with its work. */
export type Registration = (program: Command, run: Run) => void;
