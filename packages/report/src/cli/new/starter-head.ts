/**
 * The part of a starter project that is the same for every element: name, place, room.
 *
 * @param element - "wall", "roof", "floor" or "partition"
 * @param climate - a place that is known, or the path of a climate table
 * @param room - keys of the room inside, where they are known
 * @returns lines of YAML with comments
 */
export function starterHead(element: string, climate: string, room: readonly string[] | null): string {
  return `# A project for warmside. Change what differs from your building, then run:  warmside assess FILE
# Everything after a # is a remark. Every quantity has its unit: 140 mm, 20 °C, 55 %.

project: My ${element}

# Where it stands. "warmside climate list" lists the places at hand;
# the path of a climate table of your own works too.
climate: ${climate}

# The room inside.
indoor:
${room === null ? USUAL_ROOM : room.map((key) => `  ${key}\n`).join("")}
`;
}

const USUAL_ROOM = `  heating: 20 °C              # what the thermostat is set to
  humidity: class 3           # 1 store, 2 office or well-aired home, 3 not sure, 4 kitchen or hall, 5 laundry;
                              # drying clay or washing belongs to 4 or 5. A measured value works too: 55 %
`;
