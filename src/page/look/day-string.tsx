/** What lies under the pieces of the day (lanes, hours, oven, hands, the table) and over them. */
import { gutter, laneGap, type Picture, ticketSize } from '../day.ts';
import { lanes } from '../pack.ts';
import { capital } from '../show.ts';
import { laneWords } from '../words.ts';

const hottestFahrenheit = 450;

export function Ground({ picture }: { picture: Picture }) {
  const { width, height, places, hours, stringY, tableX, people } = picture;
  return (
    <svg aria-hidden="true" width={width} height={height}>
      {lanes
        .filter((lane) => places[lane].height > 0)
        .map((lane) => (
          <g key={lane}>
            <line
              class="lane-line"
              x1={0}
              x2={width}
              y1={places[lane].y - laneGap / 2 - 1}
              y2={places[lane].y - laneGap / 2 - 1}
            />
            {(lane !== 'hands' || people.length < 2) && (
              <text class="lane-name" x={0} y={places[lane].y + (lane === 'hands' ? 11 : 16)}>
                {laneWords[lane]}
              </text>
            )}
          </g>
        ))}
      {hours.map((hour) => (
        <g key={hour.label}>
          <line class="hour-line" x1={hour.x} x2={hour.x} y1={stringY} y2={height} />
          <text class="hour" x={hour.x} y={stringY - 13}>
            {hour.label}
          </text>
        </g>
      ))}
      {tableX !== undefined && (
        <line class="table" x1={tableX} x2={tableX} y1={stringY} y2={height} />
      )}
      <Oven picture={picture} />
      {people.length > 1 &&
        people.map((who, row) => (
          <text class="lane-name" key={who} x={0} y={places.hands.y + row * 14 + 11}>
            {capital(who)}
          </text>
        ))}
      {picture.busy.map((piece) => (
        <rect
          class="busy"
          key={`${piece.who} ${piece.x}`}
          x={piece.x}
          y={places.hands.y + piece.row * 14 + 1}
          width={piece.width}
          height={9}
        />
      ))}
    </svg>
  );
}

function Oven({ picture }: { picture: Picture }) {
  const { y, height } = picture.places.oven;
  const hottest = Math.max(hottestFahrenheit, ...picture.oven.map((one) => one.fahrenheit));
  const full = height - 3;
  return (
    <g class="oven">
      {picture.oven.map((piece) => {
        const high = full * Math.max(0.66, (piece.fahrenheit - 80) / (hottest - 80));
        return (
          <g key={piece.x}>
            <rect
              x={piece.x}
              y={y + full - high}
              width={Math.max(2, piece.width - 1)}
              height={high}
            />
            {piece.width > 44 && (
              <text x={piece.x + 6} y={y + full - 4}>
                {piece.value}°
              </text>
            )}
          </g>
        );
      })}
    </g>
  );
}

export function Overlay({ picture, from }: { picture: Picture; from: string }) {
  const { width, height, stringY, nowX, tableX, fold } = picture;
  return (
    <svg class="overlay" aria-hidden="true" width={width} height={height}>
      <line class="string" x1={gutter} x2={width} y1={stringY} y2={stringY} />
      <line class="twist" x1={gutter} x2={width} y1={stringY} y2={stringY} />
      {fold && (
        <g class="fold">
          {[0, 9, 18].map((dx) => (
            <path key={dx} d={`M${fold.x + dx + 4} ${stringY + 8}V${height}`} />
          ))}
          <text x={fold.x + fold.width / 2} y={stringY - 13}>
            {from}
          </text>
        </g>
      )}
      {tableX !== undefined && <circle class="table-knot" cx={tableX} cy={stringY} r="6" />}
      <line class="string" x1={nowX} x2={nowX} y1={stringY} y2={height} />
      <line class="twist" x1={nowX} x2={nowX} y1={stringY} y2={height} />
      <Bracket picture={picture} />
      <circle class="knot" cx={nowX} cy={stringY} r="8" />
      <Tickets picture={picture} />
    </svg>
  );
}

function Bracket({ picture }: { picture: Picture }) {
  const { pull, stringY, places } = picture;
  if (!pull) return null;
  const foot = places.roast.y - laneGap / 2 - 3;
  const head = stringY - 10;
  return (
    <g class="pull">
      <path d={`M${pull.x10 + 8} ${head}h-8V${foot}h8M${pull.x90 - 8} ${head}h8V${foot}h-8`} />
      <circle cx={pull.x50} cy={stringY} r="5.5" />
      <text x={pull.x10 - 6} y={foot - 4} text-anchor="end">
        {pull.early}
      </text>
      <text x={pull.x90 + 6} y={foot - 4}>
        {pull.late}
      </text>
    </g>
  );
}

function Tickets({ picture }: { picture: Picture }) {
  const { width, height } = ticketSize;
  return (
    <g class="readings">
      {picture.tickets.map((ticket) => {
        const y = picture.stringY + 12 + ticket.row * (height + 4);
        const left = ticket.x - width / 2;
        return (
          <g key={`${ticket.time} ${ticket.value}`}>
            <line x1={ticket.x} x2={ticket.x} y1={picture.stringY} y2={y} />
            <rect x={left} y={y} width={width} height={height} />
            <text x={left + 6} y={y + 17.5} class="time">
              {ticket.time}
            </text>
            <text x={left + width - 6} y={y + 18} class="value">
              {ticket.value}
            </text>
          </g>
        );
      })}
    </g>
  );
}
