//! journeys
