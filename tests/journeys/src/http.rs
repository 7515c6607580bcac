//! The little HTTP that talking to a driver takes: one request, one reply, one connection.

use std::io::{self, BufRead, BufReader, Write};
use std::net::{Ipv4Addr, TcpStream};
use std::time::Duration;

/// Starting a browser on a busy machine may take this long; the driver answers only then.
const PATIENCE: Duration = Duration::from_secs(120);

/// A reply's status and body.
#[derive(Debug)]
pub struct Reply {
    /// The status code, as 200.
    pub status: u16,
    /// The body as text.
    pub body: String,
}

/// Sends one request to 127.0.0.1 at `port`.
///
/// # Errors
/// When nobody listens there, or what comes back is not HTTP.
pub fn send(port: u16, method: &str, path: &str, body: &str) -> io::Result<Reply> {
    let mut stream = TcpStream::connect((Ipv4Addr::LOCALHOST, port))?;
    stream.set_read_timeout(Some(PATIENCE))?;
    let head = format!(
        "{method} {path} HTTP/1.1\r\nHost: 127.0.0.1:{port}\r\nConnection: close\r\n\
         Content-Type: application/json; charset=utf-8\r\nContent-Length: {}\r\n\r\n",
        body.len()
    );
    stream.write_all(head.as_bytes())?;
    stream.write_all(body.as_bytes())?;
    read(BufReader::new(stream))
}

fn read(mut stream: impl BufRead) -> io::Result<Reply> {
    let first = line(&mut stream)?;
    let status = first
        .split(' ')
        .nth(1)
        .and_then(|code| code.parse().ok())
        .ok_or_else(|| broken("no status line"))?;
    let mut length = None;
    let mut chunked = false;
    loop {
        let header = line(&mut stream)?.to_ascii_lowercase();
        if header.is_empty() {
            break;
        }
        if let Some(value) = header.strip_prefix("content-length:") {
            length = value.trim().parse::<usize>().ok();
        }
        chunked |= header.starts_with("transfer-encoding:") && header.ends_with("chunked");
    }
    let mut bytes = Vec::new();
    if chunked {
        read_chunks(&mut stream, &mut bytes)?;
    } else if let Some(length) = length {
        bytes.resize(length, 0);
        stream.read_exact(&mut bytes)?;
    } else {
        stream.read_to_end(&mut bytes)?;
    }
    let body = String::from_utf8(bytes).map_err(|_| broken("a body that is no text"))?;
    Ok(Reply { status, body })
}

fn read_chunks(stream: &mut impl BufRead, bytes: &mut Vec<u8>) -> io::Result<()> {
    loop {
        let size = usize::from_str_radix(&line(stream)?, 16).map_err(|_| broken("a bad chunk"))?;
        let mut chunk = vec![0; size];
        stream.read_exact(&mut chunk)?;
        bytes.append(&mut chunk);
        line(stream)?;
        if size == 0 {
            return Ok(());
        }
    }
}

fn line(stream: &mut impl BufRead) -> io::Result<String> {
    let mut line = String::new();
    stream.read_line(&mut line)?;
    Ok(line.trim_end().to_owned())
}

fn broken(what: &str) -> io::Error {
    io::Error::new(io::ErrorKind::InvalidData, what.to_owned())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn both_ways_to_send_a_body_are_read() {
        let counted = "HTTP/1.1 200 OK\r\nContent-Length: 5\r\n\r\nhello, and more";
        assert_eq!(read(counted.as_bytes()).unwrap().body, "hello");
        let chunked = "HTTP/1.1 404 Not Found\r\nTransfer-Encoding: chunked\r\n\r\n\
                       3\r\nhel\r\n2\r\nlo\r\n0\r\n\r\n";
        let reply = read(chunked.as_bytes()).unwrap();
        assert_eq!((reply.status, reply.body.as_str()), (404, "hello"));
    }

    #[test]
    fn what_is_no_http_is_an_error() {
        for bytes in ["", "hello", "HTTP/1.1\r\n\r\n"] {
            assert!(read(bytes.as_bytes()).is_err(), "{bytes}");
        }
    }
}
