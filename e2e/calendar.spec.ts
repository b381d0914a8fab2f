/** The calendar: a start, events by clock time, a fault at night and the start that avoids it, a learned correction. */
import { expect, figure, openDemo, test, typeInto } from './page';

test.beforeEach(async ({ page }) => {
  await openDemo(page);
  await page.getByTestId('tab-calendar').click();
  await page.getByTestId('plan-start').click();
  await expect(page.getByTestId('events')).toBeVisible();
});

const setStart = async (page: Parameters<typeof figure>[0], start: string): Promise<void> => {
  await page.getByTestId('schedule-start').fill(start);
  await page.getByTestId('schedule-start').blur();
};
/** Hours of clock time from a start to the end of the build as the list writes it. */
const hoursToEnd = async (page: Parameters<typeof figure>[0], start: string): Promise<number> => {
  const text = await page.locator('.event[data-kind="end"]').innerText();
  const [, date, time] = /(\d{4}-\d{2}-\d{2}) (\d{2}:\d{2})/.exec(text)!;
  return (Date.parse(`${date}T${time}Z`) - Date.parse(`${start}Z`)) / 3_600_000;
};

test('the end lies as far from the start as the readout says the build takes', async ({ page }) => {
  await setStart(page, '2026-11-27T16:00');
  const hours = await figure(page, 'build-hours');
  // Four digits of the hours, and a clock cut to the minute.
  const off = async (wanted: number): Promise<number> =>
    Math.abs((await hoursToEnd(page, '2026-11-27T16:00')) - wanted);
  await expect.poll(() => off(hours)).toBeLessThan(0.03);
  await typeInto(page, 'correction-factor', '2');
  await expect.poll(() => off(2 * hours)).toBeLessThan(0.04);
});

test('an end at night is a problem; the start that is offered solves it, and both are undone', async ({
  page,
}) => {
  // A Friday: nobody is there from 22:00 on until Monday 06:00.
  await setStart(page, '2026-11-27T21:00');
  await expect(page.locator('[data-code="end-unattended"]')).toHaveCount(1);
  await expect(page.locator('.event[data-kind="end"]')).toContainText('nobody there');
  await page.getByTestId('better-start-use').click();
  await expect(page.getByTestId('problem-count')).toHaveText('0');
  await expect(page.locator('.event[data-kind="end"]')).not.toContainText('nobody there');
  await page.getByTestId('command-undo').click();
  await expect(page.getByTestId('schedule-start')).toHaveValue('2026-11-27T21:00');
  await expect(page.getByTestId('problem-count')).toHaveText('1');
});

test('a small feed is a service with its caution, and one in unattended hours blocks hand-over', async ({
  page,
}) => {
  await setStart(page, '2026-11-27T21:00');
  await typeInto(page, 'fill-feedFilled_l', '10');
  const service = page.locator('.event[data-kind="feedEmpty"]').first();
  await expect(service).toContainText('Inert gas displaces oxygen');
  await expect(page.locator('[data-code="service-unattended"]').first()).toContainText('Blocks hand-over');
  await expect(page.getByTestId('schedule-panel')).toContainText('NFPA 660');
});

test('hours over midnight are refused with what to type instead; the old ones stay', async ({ page }) => {
  await typeInto(page, 'attended-wed', '22:00-06:00');
  await expect(page.getByRole('alert')).toContainText('two ranges');
  await page.getByTestId('attended-wed').press('Escape');
  await expect(page.getByTestId('attended-wed')).toHaveValue('06:00-22:00');
  await typeInto(page, 'attended-wed', '22-24, 0-6');
  await expect(page.getByTestId('attended-wed')).toHaveValue('00:00-06:00, 22:00-24:00');
});

test('finished builds teach a correction and survive a reload; the layout holds factor and spread', async ({
  page,
}) => {
  for (const [planned, real] of [
    ['10', '11'],
    ['20', '21'],
    ['30', '36'],
  ] as const) {
    await typeInto(page, 'record-planned', planned);
    await typeInto(page, 'record-real', real);
    await page.getByTestId('record-add').click();
  }
  // 68 h for 60 h; the ratios spread by 6.98 % of that [by hand].
  await expect(page.getByTestId('learned')).toContainText('1.133');
  await expect(page.getByTestId('learned')).toContainText('6.98');
  await page.getByTestId('learned-use').click();
  await expect(page.getByTestId('correction-factor')).toHaveValue('1.133');
  await expect(page.getByTestId('correction-spread')).toHaveValue('6.98');
  await page.reload();
  await page.getByTestId('tab-calendar').click();
  await expect(page.getByTestId('build-records').locator('tbody tr')).toHaveCount(3);
  await expect(page.getByTestId('records-elsewhere')).toHaveCount(0);
  await expect(page.getByTestId('correction-factor')).toHaveValue('1.133');
  await page
    .getByRole('button', { name: /^Remove the record/ })
    .first()
    .click();
  await expect(page.getByTestId('build-records').locator('tbody tr')).toHaveCount(2);
});
