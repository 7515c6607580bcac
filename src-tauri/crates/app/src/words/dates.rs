//! Dates and times in words.

use super::{Arg, Words};
use chrono::{Datelike, NaiveDate, NaiveTime, Timelike};

impl Words {
    /// A day: `Wednesday 25 November`, `miércoles 25 de noviembre`.
    #[must_use]
    pub fn day_text(&self, day: NaiveDate) -> String {
        self.format("date-day", &self.day_args(day))
    }

    /// A date with its year and no weekday: `25 November 2026`, `25 de noviembre de 2026`.
    #[must_use]
    pub fn date_text(&self, day: NaiveDate) -> String {
        let mut args = self.day_args(day);
        args.push(("year", Arg::text(day.year().to_string())));
        self.format("date-whole", &args)
    }

    /// A day as seen from another: today, yesterday, or the date, with its year when that differs.
    #[must_use]
    pub fn day_text_from(&self, day: NaiveDate, today: NaiveDate) -> String {
        if day == today {
            self.text("date-today")
        } else if Some(day) == today.pred_opt() {
            self.text("date-yesterday")
        } else if day.year() == today.year() {
            self.day_text(day)
        } else {
            let mut args = self.day_args(day);
            // Years are names, not amounts: they never get a decimal mark.
            args.push(("year", Arg::text(day.year().to_string())));
            self.format("date-day-year", &args)
        }
    }

    /// A date for a table or a picture: `15 Nov`, with its year when that differs from the year of `today`.
    #[must_use]
    pub fn date_short_from(&self, day: NaiveDate, today: NaiveDate) -> String {
        let month = self.text(&format!("date-month-short-{}", day.month()));
        let mut args = vec![("day", Arg::from(day.day())), ("month", month.into())];
        if day.year() == today.year() {
            return self.format("date-short", &args);
        }
        args.push(("year", Arg::text(day.year().to_string())));
        self.format("date-short-year", &args)
    }

    /// A time of day on the 24-hour clock: `9:05`.
    #[must_use]
    pub fn time_text(&self, time: NaiveTime) -> String {
        let minute = format!("{:02}", time.minute());
        self.format(
            "date-time",
            &[
                ("hour", Arg::text(time.hour().to_string())),
                ("minute", Arg::text(minute)),
            ],
        )
    }

    fn day_args(&self, day: NaiveDate) -> Vec<(&'static str, Arg)> {
        let weekday = self.text(&format!(
            "date-weekday-{}",
            day.weekday().number_from_monday()
        ));
        let month = self.text(&format!("date-month-{}", day.month()));
        vec![
            ("weekday", weekday.into()),
            ("day", day.day().into()),
            ("month", month.into()),
        ]
    }
}
