import { say } from '../../language/messages.ts';

/** Where the tape goes at one station: the section seen from behind, with each reading named as in the table. */
export function StationSketch({ height }: { height: string }) {
  return (
    <svg className="station-sketch" viewBox="0 0 320 190" role="img" aria-label={say('boat.sketch.spoken')}>
      <path d="M10 172h300" stroke="var(--rule)" />
      <path d="M160 14v168" stroke="var(--rule)" strokeDasharray="12 4 2 4" />
      <path
        d="M62 34C66 96 92 146 160 152 228 146 254 96 258 34"
        fill="var(--hull)"
        stroke="var(--hull-line)"
        strokeWidth="1.4"
      />
      <g stroke="var(--measure)" fill="none" strokeWidth="1.2">
        <path d="M62 26h196M62 22v8M258 22v8" />
        <path d="M85 102h150M85 98v8M235 98v8" />
        <path d="M36 34v138M32 34h8M32 172h8" />
        <path d="M284 152v20M280 152h8M280 172h8" />
        <path d="M176 102v50M172 102h8M172 152h8" />
        <path d="M160 152h124M36 34h26" stroke="var(--rule)" />
      </g>
      <g fill="var(--measure)" fontSize="13" textAnchor="middle">
        <text x="160" y="20">
          {say('boat.station.sheer-beam')}
        </text>
        <text x="160" y="96" stroke="var(--hull)" strokeWidth="4" paintOrder="stroke">
          {say('boat.station.beam', { height })}
        </text>
        <text x="24" y="106" transform="rotate(-90 24 106)">
          {say('boat.station.sheer')}
        </text>
        <text x="276" y="166" textAnchor="end">
          {say('boat.station.keel')}
        </text>
        <text x="170" y="132" textAnchor="end">
          {height}
        </text>
        <text x="80" y="186" fill="var(--ink-faint)">
          {say('boat.sketch.base-line')}
        </text>
      </g>
    </svg>
  );
}
