/** Arrow keys as steps along the screen's axes. */

/** +1 or −1 along each screen axis for an arrow key; null for other keys. */
export const arrowOf = (key: string): { readonly x: number; readonly y: number } | null => {
  switch (key) {
    case 'ArrowLeft':
      return { x: -1, y: 0 };
    case 'ArrowRight':
      return { x: 1, y: 0 };
    case 'ArrowUp':
      return { x: 0, y: 1 };
    case 'ArrowDown':
      return { x: 0, y: -1 };
    default:
      return null;
  }
};
