/** A quiet drawing for the empty sheet: a racing canoe's lines in plan and profile with the three points of contact. */
export function StartFigure() {
  return (
    <svg className="start-figure" viewBox="0 0 520 330" aria-hidden="true" focusable="false">
      <g fill="none" stroke="var(--rule)" strokeWidth="1">
        <path d="M10 90h500" strokeDasharray="14 4 2 4" />
        <path d="M260 18v300" strokeDasharray="14 4 2 4" />
        {[60, 110, 160, 210, 310, 360, 410, 460].map((x) => (
          <path key={x} d={`M${x} 44v92M${x} 196v66`} stroke="var(--rule-faint)" />
        ))}
      </g>
      <path
        d="M20 90C90 58 170 46 260 46s170 12 240 44c-70 32-150 44-240 44S90 122 20 90Z"
        fill="var(--hull)"
        stroke="var(--ink)"
        strokeWidth="1.3"
      />
      <path
        d="M20 214c60 34 140 44 240 44s180-10 240-44"
        fill="var(--hull)"
        stroke="var(--ink)"
        strokeWidth="1.3"
      />
      <path d="M20 214c90 12 170 14 240 14s150-2 240-14" fill="none" stroke="var(--ink)" strokeWidth="1.3" />
      <path d="M0 240h520v40H0Z" fill="var(--water)" />
      <path d="M0 240h520" stroke="var(--water-line)" />
      <path
        d="M222 104 172 78 322 80Z"
        fill="none"
        stroke="var(--measure)"
        strokeWidth="1.2"
        strokeDasharray="4 3"
      />
      <circle cx="222" cy="104" r="7" fill="var(--accent)" />
      <circle cx="172" cy="78" r="5" fill="var(--wood-deep)" />
      <circle cx="322" cy="80" r="5" fill="var(--ink)" />
      <path d="M222 114v28M260 114v28M222 136h38" stroke="var(--accent)" fill="none" />
      <path d="m222 136 7-3v6ZM260 136l-7-3v6Z" fill="var(--accent)" />
    </svg>
  );
}
