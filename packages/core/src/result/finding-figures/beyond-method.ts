/** A room next to a build-up. */
export interface TouchedRoomFigures {
  room: string;
  side: "inside" | "outside";
}

/** No figures: the code says it all. */
export type NoFigures = Readonly<Record<string, never>>;

/** Figures of findings that put a build-up beyond the method, by code. */
export interface BeyondFindings {
  /** Conductivities [W/(m·K)]; a channel is beyond the method only next to the ground or a void. */
  "metal-bridging": { framing: string; material: string; conductivity: number; limit: number; isChannel: boolean };
  /** Indices, from 0, of layers that are unlikely at that end of a list. */
  "layers-from-outside": { innermost: number | null; outermost: number | null };
  "unheated-metal-skin": NoFigures;
  "ground-feeds-water": NoFigures;
  "bursts-of-steam": TouchedRoomFigures;
  "wetter-than-class-5": TouchedRoomFigures & {
    hasPool: boolean;
    /** Vapour excess over outdoors in the coldest month, and that of class 5 [Pa], with the margin on classes [–]. */
    excess: number;
    /** [–] */
    classFive: number;
    /** [–] */
    humidityMargin: number;
  };
}
