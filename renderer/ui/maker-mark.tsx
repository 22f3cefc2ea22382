/** The maker's mark: three points of contact, tied as the support triangle, on the boat's centreline. */
export function MakerMark() {
  return (
    <svg viewBox="0 0 24 24" width="22" height="22" aria-hidden="true" focusable="false">
      <path d="M2 12h20" stroke="currentColor" strokeWidth="1" strokeDasharray="5 2 1 2" fill="none" />
      <path d="M5.5 16.5 12.5 6.5 19 15.5Z" stroke="currentColor" strokeWidth="1.4" fill="none" />
      <circle cx="12.5" cy="6.5" r="2.6" fill="var(--accent)" />
      <circle cx="5.5" cy="16.5" r="1.8" fill="currentColor" />
      <circle cx="19" cy="15.5" r="1.8" fill="currentColor" />
    </svg>
  );
}
