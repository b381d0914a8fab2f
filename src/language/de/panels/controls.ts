/** German of the panels: controls. */
export const PANELS_CONTROLS = {
  'a whole number, {range}': 'ganze Zahl, {range}',
  'any number': 'jede Zahl',
  'Kept: the values that differ': 'Beibehalten: die verschiedenen Werte',
  'Kept: {value} {unit}': 'Beibehalten: {value} {unit}',
  'Sums such as 3+2 mm; +=5 or -=5 change what is there. Drag here sideways, arrows or wheel: steps, Shift ten, Alt a tenth.':
    'Summen wie 3+2 mm; +=5 oder -=5 ändern, was dasteht. Hier seitwärts ziehen, Pfeile oder Rad: Schritte, Umschalt zehn, Alt ein Zehntel.',
  'up to {max}': 'bis {max}',
  '{min} or more': '{min} oder mehr',
  '{min} to {max}': '{min} bis {max}',
};
