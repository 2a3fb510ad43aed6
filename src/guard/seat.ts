/**
 * The window whose page an order in this frame belongs to: the outermost one of the same origin. Its document holds the
 * total, and the curtain is drawn over it. A frame of another origin is a page of its own.
 */
export function seatOf(own: Window): Window {
  let seat = own
  try {
    // Throws at a parent of another origin.
    while (seat.parent !== seat && seat.parent.document) seat = seat.parent
  } catch {
    // `seat` is the outermost that may be looked into.
  }
  return seat
}
