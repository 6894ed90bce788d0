/**
 * The project ready for calculation: every quantity in SI, every name resolved, layers from the room outwards.
 * `read-project.ts` makes it from the text of a project file.
 */

export type * from "./types/build-up.ts";
export type * from "./types/climate.ts";
export type * from "./types/far-side.ts";
export type * from "./types/junction.ts";
export type * from "./types/layer.ts";
export type * from "./types/material.ts";
export type * from "./types/prices.ts";
export type * from "./types/project.ts";
export type * from "./types/room.ts";
