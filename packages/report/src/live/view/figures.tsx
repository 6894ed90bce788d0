import { dewPoint, relativeHumidity, type SectionResult } from "@warmside/core";
import { fixed, percent } from "../../numbers.ts";
import { faceNodes } from "../../section-view.ts";

/** The figures behind the lines, face by face. */
export function Figures({ section, month }: { section: SectionResult; month: number }) {
  const now = section.months[Math.round(month) % 12]!;
  return (
    <details class="figures">
      <summary>Figures of {now.month}</summary>
      <table>
        <thead>
          <tr>
            <th scope="col">Where</th>
            <th scope="col">Temperature, °C</th>
            <th scope="col">Dew point, °C</th>
            <th scope="col">Relative humidity</th>
            <th scope="col">Vapour pressure, Pa</th>
          </tr>
        </thead>
        <tbody>
          {faceNodes(now).map((node) => (
            <tr key={node.node}>
              <th scope="row">
                {node.after === null ? "room surface" : `after ${(node.layer ?? 0) + 1} ${node.after}`}
              </th>
              <td>{fixed(node.temperature, 1)}</td>
              <td>{fixed(dewPoint(node.vapourPressure), 1)}</td>
              <td>{percent(relativeHumidity(node.vapourPressure, node.temperature), 0)}</td>
              <td>{fixed(node.vapourPressure, 0)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}
