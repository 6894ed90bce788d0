import { config } from "zod/v4/core";

/**
 * The page allows no code made from text. Where the schemas are not told, they try once whether they may make some, and
 * a browser writes to its console that it has stopped that. Imported before any schema is made.
 */
config({ jitless: true });
